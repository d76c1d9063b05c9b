// @ts-check
/**
 * Which barrel is next: what the server knows of the round under way, and what was entered here since. Pure: no page, no store.
 */

/**
 * What was entered here and is not on the page yet.
 * @typedef {{ key: string, kind: "reading" | "act", round: string, barrel: number, value: string, then: number[], measure: string, expect: string, seen: number }} Entered
 */

/**
 * @typedef {object} Under the round under way
 * @property {string} round its number; empty for one not begun
 * @property {string} measure
 * @property {number[]} sequence barrels in order, the first again last
 * @property {number[]} read
 * @property {string} expect what the last turn is expected to give, "4:3.80:4.00"
 * @property {boolean} turn whether something is to be turned before anything is read
 */

/**
 * What is left to read. A barrel read again at once is a repeat; the first one again is the proof only when all others are read.
 * @param {number[]} sequence
 * @param {number[]} read
 * @returns {number[]}
 */
export function leftOf(sequence, read) {
  const left = [...sequence];
  for (const barrel of read) {
    const at = left.indexOf(barrel);
    const tooEarly = at === left.length - 1 && left.length > 1 && barrel === sequence[0];
    if (at >= 0 && !tooEarly) {
      left.splice(at, 1);
    }
  }
  return left;
}

/**
 * The round as it stands with all that was entered here.
 * @param {Under} server
 * @param {Iterable<Entered>} entered in the order entered
 * @param {number[]} whole the sequence of a whole round
 * @param {string} anew number of a round begun anew by hand; empty where none was
 * @returns {Under}
 */
export function follow(server, entered, whole, anew) {
  let now = { ...server, read: [...server.read] };
  for (const one of entered) {
    if (one.kind === "act") {
      now = { ...now, round: "", read: [], sequence: one.then.length > 0 ? one.then : whole, measure: one.measure || now.measure, expect: one.expect, turn: false };
    } else if (one.round === now.round) {
      now = { ...now, read: [...now.read, one.barrel], turn: false };
    } else {
      now = { ...now, round: one.round, read: [one.barrel], sequence: one.round === anew ? whole : now.sequence, measure: one.measure || now.measure, turn: false };
    }
  }
  return anew !== "" && now.round !== anew ? { ...now, round: anew, read: [], sequence: whole, turn: false } : now;
}

/**
 * How a figure stands to what was expected of its barrel.
 * @param {string} expect such as "4:3.80:4.00 5:4.00:4.20"
 * @param {number} barrel
 * @param {number} figure
 * @returns {{ words: string, ok: boolean } | null} null where nothing was expected
 */
export function compared(expect, barrel, figure) {
  const mine = expect.split(" ").map((e) => e.split(":").map(Number)).find(([b]) => b === barrel);
  const [, low, high] = mine ?? [];
  if (low === undefined || high === undefined) {
    return null;
  }
  const band = `${low.toFixed(1)} to ${high.toFixed(1)}`;
  // The figure is as coarse as the band is shown.
  return figure < low - 0.05 ? { words: `Less than expected (${band})`, ok: false } : figure > high + 0.05 ? { words: `More than expected (${band})`, ok: false } : { words: `\u2713 As expected (${band})`, ok: true };
}
