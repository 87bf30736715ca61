// The budgets: what is measured, its limit and the aim. Times are medians, sizes are whole.
//
// A limit that is missed is said on every run and in DEVELOPERS.md; its `ceiling` is what is held until then. A ceiling comes down, and
// goes when the limit is reached. The measuring is the same either way.

/**
 * Whole download of who speaks English, brotli -11. MISSED: some 1 798 kB in eight parts; 1 753 before all words were messages that a language can order as it
 * needs. Another language is one file more, German 49 kB, for who chose it. The largest function has 34 kB of 5.5 MB. A first
 * visit waits for START only.
 */
export const DOWNLOAD = { what: "whole download, brotli", unit: "kB", limit: 900, aim: 500, ceiling: 1810 };
/** What of it a first visit waits for: all but the parts that come after the start. A limit of our own. */
export const START = { what: "of it before the recipe can be typed in", unit: "kB", limit: 750, aim: 500 };
/** First contentful paint of a first visit at 4x CPU slowdown on a slow line. */
export const FIRST_PAINT = { what: "first contentful paint", unit: "ms", limit: 1000, aim: 600 };
/** The same visit until a box can be typed in: 5.2 s here. The ceiling is for the machine of CI, which took 9.0 s where this one took 7.4. */
export const TYPED_IN = { what: "first visit until a box can be typed in", unit: "ms", limit: 6000, aim: 4000, ceiling: 7500 };
/** Any later start, with no network and at 4x CPU slowdown, until the figures are shown. */
export const LATER_START = { what: "later start until the figures are shown", unit: "ms", limit: 1500, aim: 800 };
/** Key to painted figure at 4x CPU slowdown; a box and one text on an empty page take 13 ms. MISSED: 88 ms here, 95 to 111 on the machine of CI, which is why 125 is held: 37 until the document has changed, the rest layout and paint. */
export const KEYSTROKE = { what: "key to painted figure", unit: "ms", limit: 50, aim: 25, ceiling: 125 };
/** The longest task while 100 000 draws are made. */
export const DRAWS = { what: "longest task while draws are made", unit: "ms", limit: 50, aim: 25 };
/** A library of 2 000 recipes, from what a person does to the painted list: 83 ms here to open it. The ceiling is for the machine of CI, which took 106 where this one took 93 to 102. */
export const LIBRARY = { what: "library of 2 000 recipes", unit: "ms", limit: 100, aim: 16, ceiling: 110 };
/** How long the page does not answer while a file is refused: too large or nested too deep, and one of a million empty records. */
export const REFUSAL = { what: "page at a standstill while a file is refused", unit: "ms", limit: 250, aim: 50 };
export const MANY_RECORDS = { what: "page at a standstill over a million empty records", unit: "ms", limit: 2500, aim: 250 };

/** What a measurement says of its budget, and whether what is held is held. */
export function against({ what, unit, limit, aim, ceiling }, value) {
  const most = ceiling ?? limit;
  const missed = value > limit ? `; THE LIMIT IS MISSED, held at ${most} ${unit}` : "";
  return {
    words: `${what}: ${value.toFixed(1)} ${unit} of at most ${limit} ${unit}, aim ${aim} ${unit}${missed}`,
    held: value <= most,
  };
}
