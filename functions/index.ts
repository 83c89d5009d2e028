// Written by src/tools/generate/catalogue.mjs from the files of this folder.
import type { AnyDefinition } from './define.ts';
import KELVIN from './colour/KELVIN.ts';
import KELVINTHROUGH from './colour/KELVINTHROUGH.ts';
import MIRED from './colour/MIRED.ts';
import MIREDSHIFT from './colour/MIREDSHIFT.ts';
import TUNGSTENKELVIN from './colour/TUNGSTENKELVIN.ts';
import BEAMANGLE from './distance/BEAMANGLE.ts';
import BEAMCANDELA from './distance/BEAMCANDELA.ts';
import BEAMDIAMETER from './distance/BEAMDIAMETER.ts';
import BEAMDISTANCE from './distance/BEAMDISTANCE.ts';
import BOUNCELUX from './distance/BOUNCELUX.ts';
import CANDELALUX from './distance/CANDELALUX.ts';
import DIMMERFOR from './distance/DIMMERFOR.ts';
import DIMMERSTOPS from './distance/DIMMERSTOPS.ts';
import DISCLUX from './distance/DISCLUX.ts';
import DISTANCEFOR from './distance/DISTANCEFOR.ts';
import FALLOFF from './distance/FALLOFF.ts';
import FARFIELD from './distance/FARFIELD.ts';
import FOOTCANDLES from './distance/FOOTCANDLES.ts';
import FOOTLAMBERTS from './distance/FOOTLAMBERTS.ts';
import INVERSESQUARE from './distance/INVERSESQUARE.ts';
import INVERSESQUAREERROR from './distance/INVERSESQUAREERROR.ts';
import LIGHTFACTOR from './distance/LIGHTFACTOR.ts';
import LUX from './distance/LUX.ts';
import LUXCANDELA from './distance/LUXCANDELA.ts';
import NEWDISTANCE from './distance/NEWDISTANCE.ts';
import NEWOUTPUT from './distance/NEWOUTPUT.ts';
import NITS from './distance/NITS.ts';
import PANELDISTANCE from './distance/PANELDISTANCE.ts';
import PANELLUMINANCE from './distance/PANELLUMINANCE.ts';
import PANELLUX from './distance/PANELLUX.ts';
import SOURCEANGLE from './distance/SOURCEANGLE.ts';
import SOURCESIZE from './distance/SOURCESIZE.ts';
import CLOSEUPSTOPS from './exposure/CLOSEUPSTOPS.ts';
import EIAFTER from './exposure/EIAFTER.ts';
import EV from './exposure/EV.ts';
import EVLUMINANCE from './exposure/EVLUMINANCE.ts';
import EVLUX from './exposure/EVLUX.ts';
import EXPOSURETIME from './exposure/EXPOSURETIME.ts';
import FOOTROOM from './exposure/FOOTROOM.ts';
import FRAMESTOPS from './exposure/FRAMESTOPS.ts';
import GREYSTOPS from './exposure/GREYSTOPS.ts';
import HEADROOM from './exposure/HEADROOM.ts';
import INCIDENTF from './exposure/INCIDENTF.ts';
import INCIDENTISO from './exposure/INCIDENTISO.ts';
import INCIDENTLUX from './exposure/INCIDENTLUX.ts';
import INCIDENTTIME from './exposure/INCIDENTTIME.ts';
import LUMINANCEEV from './exposure/LUMINANCEEV.ts';
import LUMINANCEOF from './exposure/LUMINANCEOF.ts';
import LUXEV from './exposure/LUXEV.ts';
import READINGF from './exposure/READINGF.ts';
import READINGLUX from './exposure/READINGLUX.ts';
import REFLECTANCEOF from './exposure/REFLECTANCEOF.ts';
import SHUTTERANGLE from './exposure/SHUTTERANGLE.ts';
import SHUTTERTIME from './exposure/SHUTTERTIME.ts';
import SPOTF from './exposure/SPOTF.ts';
import SPOTISO from './exposure/SPOTISO.ts';
import SPOTLUMINANCE from './exposure/SPOTLUMINANCE.ts';
import SPOTTIME from './exposure/SPOTTIME.ts';
import TNUMBER from './exposure/TNUMBER.ts';
import DENSITYSTOPS from './filter/DENSITYSTOPS.ts';
import DENSITYTRANSMISSION from './filter/DENSITYTRANSMISSION.ts';
import DIFFUSIONLOSS from './filter/DIFFUSIONLOSS.ts';
import FDIFFUSIONLOSS from './filter/FDIFFUSIONLOSS.ts';
import FILTERSTACK from './filter/FILTERSTACK.ts';
import NDFOR from './filter/NDFOR.ts';
import NDREST from './filter/NDREST.ts';
import STOPSDENSITY from './filter/STOPSDENSITY.ts';
import STOPSTRANSMISSION from './filter/STOPSTRANSMISSION.ts';
import TRANSMISSIONDENSITY from './filter/TRANSMISSIONDENSITY.ts';
import TRANSMISSIONSTOPS from './filter/TRANSMISSIONSTOPS.ts';
import AGREES from './stops/AGREES.ts';
import CONTRASTRATIO from './stops/CONTRASTRATIO.ts';
import EVENNESS from './stops/EVENNESS.ts';
import FACTORSTOPS from './stops/FACTORSTOPS.ts';
import FAGREES from './stops/FAGREES.ts';
import FAVERAGE from './stops/FAVERAGE.ts';
import FCOMBINE from './stops/FCOMBINE.ts';
import FCONTRASTRATIO from './stops/FCONTRASTRATIO.ts';
import FEXACT from './stops/FEXACT.ts';
import FFILLFOR from './stops/FFILLFOR.ts';
import FILLFOR from './stops/FILLFOR.ts';
import FKEYFILLRATIO from './stops/FKEYFILLRATIO.ts';
import FLIGHTINGRATIO from './stops/FLIGHTINGRATIO.ts';
import FMARK from './stops/FMARK.ts';
import FNUMBERAT from './stops/FNUMBERAT.ts';
import FSPREAD from './stops/FSPREAD.ts';
import FSTOPS from './stops/FSTOPS.ts';
import FTENTHS from './stops/FTENTHS.ts';
import FWITHOUT from './stops/FWITHOUT.ts';
import KEYFILLRATIO from './stops/KEYFILLRATIO.ts';
import LEVELAT from './stops/LEVELAT.ts';
import LIGHTINGRATIO from './stops/LIGHTINGRATIO.ts';
import PLACEMENT from './stops/PLACEMENT.ts';
import SPREAD from './stops/SPREAD.ts';
import STOPFACTOR from './stops/STOPFACTOR.ts';
import STOPS from './stops/STOPS.ts';
import VERDICT from './stops/VERDICT.ts';
import WITHOUT from './stops/WITHOUT.ts';

export {
  KELVIN,
  KELVINTHROUGH,
  MIRED,
  MIREDSHIFT,
  TUNGSTENKELVIN,
  BEAMANGLE,
  BEAMCANDELA,
  BEAMDIAMETER,
  BEAMDISTANCE,
  BOUNCELUX,
  CANDELALUX,
  DIMMERFOR,
  DIMMERSTOPS,
  DISCLUX,
  DISTANCEFOR,
  FALLOFF,
  FARFIELD,
  FOOTCANDLES,
  FOOTLAMBERTS,
  INVERSESQUARE,
  INVERSESQUAREERROR,
  LIGHTFACTOR,
  LUX,
  LUXCANDELA,
  NEWDISTANCE,
  NEWOUTPUT,
  NITS,
  PANELDISTANCE,
  PANELLUMINANCE,
  PANELLUX,
  SOURCEANGLE,
  SOURCESIZE,
  CLOSEUPSTOPS,
  EIAFTER,
  EV,
  EVLUMINANCE,
  EVLUX,
  EXPOSURETIME,
  FOOTROOM,
  FRAMESTOPS,
  GREYSTOPS,
  HEADROOM,
  INCIDENTF,
  INCIDENTISO,
  INCIDENTLUX,
  INCIDENTTIME,
  LUMINANCEEV,
  LUMINANCEOF,
  LUXEV,
  READINGF,
  READINGLUX,
  REFLECTANCEOF,
  SHUTTERANGLE,
  SHUTTERTIME,
  SPOTF,
  SPOTISO,
  SPOTLUMINANCE,
  SPOTTIME,
  TNUMBER,
  DENSITYSTOPS,
  DENSITYTRANSMISSION,
  DIFFUSIONLOSS,
  FDIFFUSIONLOSS,
  FILTERSTACK,
  NDFOR,
  NDREST,
  STOPSDENSITY,
  STOPSTRANSMISSION,
  TRANSMISSIONDENSITY,
  TRANSMISSIONSTOPS,
  AGREES,
  CONTRASTRATIO,
  EVENNESS,
  FACTORSTOPS,
  FAGREES,
  FAVERAGE,
  FCOMBINE,
  FCONTRASTRATIO,
  FEXACT,
  FFILLFOR,
  FILLFOR,
  FKEYFILLRATIO,
  FLIGHTINGRATIO,
  FMARK,
  FNUMBERAT,
  FSPREAD,
  FSTOPS,
  FTENTHS,
  FWITHOUT,
  KEYFILLRATIO,
  LEVELAT,
  LIGHTINGRATIO,
  PLACEMENT,
  SPREAD,
  STOPFACTOR,
  STOPS,
  VERDICT,
  WITHOUT,
};

/** Every function of the library, by family and name. */
export const catalogue: readonly AnyDefinition[] = [
  KELVIN,
  KELVINTHROUGH,
  MIRED,
  MIREDSHIFT,
  TUNGSTENKELVIN,
  BEAMANGLE,
  BEAMCANDELA,
  BEAMDIAMETER,
  BEAMDISTANCE,
  BOUNCELUX,
  CANDELALUX,
  DIMMERFOR,
  DIMMERSTOPS,
  DISCLUX,
  DISTANCEFOR,
  FALLOFF,
  FARFIELD,
  FOOTCANDLES,
  FOOTLAMBERTS,
  INVERSESQUARE,
  INVERSESQUAREERROR,
  LIGHTFACTOR,
  LUX,
  LUXCANDELA,
  NEWDISTANCE,
  NEWOUTPUT,
  NITS,
  PANELDISTANCE,
  PANELLUMINANCE,
  PANELLUX,
  SOURCEANGLE,
  SOURCESIZE,
  CLOSEUPSTOPS,
  EIAFTER,
  EV,
  EVLUMINANCE,
  EVLUX,
  EXPOSURETIME,
  FOOTROOM,
  FRAMESTOPS,
  GREYSTOPS,
  HEADROOM,
  INCIDENTF,
  INCIDENTISO,
  INCIDENTLUX,
  INCIDENTTIME,
  LUMINANCEEV,
  LUMINANCEOF,
  LUXEV,
  READINGF,
  READINGLUX,
  REFLECTANCEOF,
  SHUTTERANGLE,
  SHUTTERTIME,
  SPOTF,
  SPOTISO,
  SPOTLUMINANCE,
  SPOTTIME,
  TNUMBER,
  DENSITYSTOPS,
  DENSITYTRANSMISSION,
  DIFFUSIONLOSS,
  FDIFFUSIONLOSS,
  FILTERSTACK,
  NDFOR,
  NDREST,
  STOPSDENSITY,
  STOPSTRANSMISSION,
  TRANSMISSIONDENSITY,
  TRANSMISSIONSTOPS,
  AGREES,
  CONTRASTRATIO,
  EVENNESS,
  FACTORSTOPS,
  FAGREES,
  FAVERAGE,
  FCOMBINE,
  FCONTRASTRATIO,
  FEXACT,
  FFILLFOR,
  FILLFOR,
  FKEYFILLRATIO,
  FLIGHTINGRATIO,
  FMARK,
  FNUMBERAT,
  FSPREAD,
  FSTOPS,
  FTENTHS,
  FWITHOUT,
  KEYFILLRATIO,
  LEVELAT,
  LIGHTINGRATIO,
  PLACEMENT,
  SPREAD,
  STOPFACTOR,
  STOPS,
  VERDICT,
  WITHOUT,
];

/** The same by name, in capitals. */
export const byName: ReadonlyMap<string, AnyDefinition> = new Map(
  catalogue.map((definition) => [definition.name, definition]),
);
