/** What Halfstop is, and under which licences. */
export const about = {
  title: 'About Halfstop',
  what: 'A lighting workbook: plan, meter and repeat the light on a set, in stops. Books are kept on this device and in the files you save. Nothing is sent anywhere.',
  freedom:
    'Halfstop is free software: you may use, study, share and change it under the GNU General Public License, version 3 or later. It comes without warranty. Its function library may be used on its own under the MIT licence.',
  licence: 'Licence of Halfstop',
  libraries: 'Libraries and typefaces, with their licences',
  limits:
    'A number here is as good as the reading it came from. Electrical figures help to plan and do not replace a competent person.',
} as const;
