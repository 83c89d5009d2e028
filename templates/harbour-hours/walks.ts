/** The two walks of the sample production as they were written down. Invented. */
export const loft = `place,point,meter,reading,note
Sail loft,Camera,setting,"ISO 800, 25 fps, 180°, ND none, white balance 3200 K",50 Hz mains
Sail loft,Taking stop,setting,f/2.8,
Sail loft,All lamps off at face,incident flat,0.5 fc,window gap only
Sail loft,Key side of face,incident dome,f/2.8,all lights on
Sail loft,Fill side of face,incident dome,f/1.4 1/3,all lights on
Sail loft,Key alone,incident flat,11 fc,fill off
Sail loft,Fill alone,incident flat,4.2 fc,key off
Sail loft,Back light on shoulder,incident flat,f/4,key and fill off
Sail loft,Canvas left,incident flat,f/1.4,
Sail loft,Canvas right,incident flat,f/1.4+0.4,
Sail loft,Rope bench,incident flat,85 lx,
Sail loft,Window gap,spot,1.2 kcd/m2,a hand wide; clips on purpose
Sail loft,Grey card at face,spot,6.9 cd/m2,
Sail loft,Dark corner,spot,0.55 cd/m2,
Sail loft,Key colour,colour,3230 K,Duv +0.0011
Sail loft,Fill colour,colour,3390 K,Duv +0.0068
Sail loft,Window colour,colour,6900 K,Duv +0.0030
`;

export const shed = `place;point;meter;reading;note
Boat shed;Camera;setting;"ISO 1250, 25 fps, 1/50 s, ND none, white balance 5600 K";50 Hz mains
Boat shed;Taking stop;setting;f/2.8;
Boat shed;All lamps off at face;incident flat;4 lx;door shut
Boat shed;Key side of face;incident dome;f/3.2;all lights on
Boat shed;Fill side of face;incident dome;f/2;all lights on
Boat shed;Key alone;incident flat;104 lx;fill off
Boat shed;Fill alone;incident flat;41,5 lx;key off
Boat shed;Back light on shoulder;incident flat;f/3.6;key and fill off
Boat shed;Canvas left;incident flat;f/1.8;
Boat shed;Canvas right;incident flat;f/1.4;
Boat shed;Rope bench;incident flat;;not metered yet
Boat shed;Grey card at face;spot;5,6 cd/m2;
Boat shed;Dark corner;spot;0,9 cd/m2;
Boat shed;Key colour;colour;5480 K;Duv -0,0012
Boat shed;Fill colour;colour;5230 K;Duv +0,0095
`;
