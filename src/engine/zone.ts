const hour = 3_600_000;

/**
 * Hours that clocks of a time zone (IANA) are ahead of universal time when they show `wall`, by the
 * rules that the browser knows. Zero for a zone that it does not know.
 */
export function aheadIn(zone: string): (wall: number) => number {
  const shows = clockOf(zone);
  if (!shows) return () => 0;
  const ahead = (moment: number) => shows(moment) - moment;
  // What the clock shows is ahead of the moment by at most 14 hours, in which it may have been changed.
  return (wall) => ahead(wall - ahead(wall)) / hour;
}

/** What clocks of a zone show at a moment, as if it were universal time; undefined for an unknown zone. */
function clockOf(zone: string): ((moment: number) => number) | undefined {
  let form: Intl.DateTimeFormat;
  try {
    form = new Intl.DateTimeFormat('en-GB', {
      ...{ timeZone: zone, calendar: 'gregory', hourCycle: 'h23' },
      ...{ year: 'numeric', month: 'numeric', day: 'numeric' },
      ...{ hour: 'numeric', minute: 'numeric', second: 'numeric' },
    });
  } catch {
    return undefined;
  }
  return (moment) => {
    const parts = new Map(
      form.formatToParts(moment).map(({ type, value }) => [type, Number(value)]),
    );
    const part = (type: Intl.DateTimeFormatPartTypes) => parts.get(type) ?? 0;
    const whole = Math.floor(moment / 1000) * 1000;
    return (
      Date.UTC(
        ...([part('year'), part('month') - 1, part('day')] as const),
        ...([part('hour'), part('minute'), part('second')] as const),
      ) +
      (moment - whole)
    );
  };
}
