// Reads Code 39 and Code 128, as they stand on frames and labels, out of one row of brightness. Where the browser has a reader of
// its own that one is asked; this one is for the others.
// Sources: ISO/IEC 16388 (Code 39) and ISO/IEC 15417 (Code 128), tables and rules from memory, held in the tests against a library's writer.

const SIGNS_39 = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ-. $/+%*";
// nine elements a sign, bar first; a set bit is a wide one
const WIDE_39 = [
  0x034, 0x121, 0x061, 0x160, 0x031, 0x130, 0x070, 0x025, 0x124, 0x064, 0x109, 0x049, 0x148, 0x019, 0x118, 0x058, 0x00d,
  0x10c, 0x04c, 0x01c, 0x103, 0x043, 0x142, 0x013, 0x112, 0x052, 0x007, 0x106, 0x046, 0x016, 0x181, 0x0c1, 0x1c0, 0x091,
  0x190, 0x0d0, 0x085, 0x184, 0x0c4, 0x0a8, 0x0a2, 0x08a, 0x02a, 0x094,
];

// six elements of eleven modules a sign, in the order of their values; 103 to 105 begin
const WIDTHS_128 = (
  "212222222122222221121223121322131222122213122312132212221213221312231212112232122132122231113222123122123221223211" +
  "221132221231213212223112312131311222321122321221312212322112322211212123212321232121111323131123131321112313132113" +
  "132311211313231113231311112133112331132131113123113321133121313121211331231131213113213311213131311123311321331121" +
  "312113312311332111314111221411431111111224111422121124121421141122141221112214112412122114122411142112142211241211" +
  "221114413111241112134111111242121142121241114212124112124211411212421112421211212141214121412121111143111341131141" +
  "114113114311411113411311113141114131311141411131211412211214211232"
).match(/.{6}/g);
const STOP_128 = "233111";
const QUIET = 5; // narrow elements of white before a code; the standards ask for ten
const FEWEST = 3; // signs: less is found by chance in any picture

/** The text of a code that the row crosses, in either direction, or null. */
export function readRow(row) {
  const runs = runsOf(row);
  return read(runs) ?? read(runs.slice().reverse());
}

function read(runs) {
  // odd places are bars
  for (let i = 1; i < runs.length - 20; i += 2) {
    const text = read39(runs, i) ?? read128(runs, i);
    if (text && text.length >= FEWEST) return text;
  }
  return null;
}

/** Widths of white and black in turn, white first, edges found between two dots. Black is darker than the middle of its neighbourhood. */
function runsOf(row) {
  const [least, most] = ends(row, 0, row.length);
  const reach = Math.max(12, Math.round(row.length / 40));
  const runs = [];
  let black = false;
  let [edge, off] = [0, 0];
  for (let i = 0; i < row.length; i++) {
    const [low, high] = ends(row, Math.max(0, i - reach), Math.min(row.length, i + reach + 1));
    // on one ground there is no middle: nothing is black there
    const now = high - low < (most - least) / 4 ? -1 : (low + high) / 2 - row[i];
    if (now > 0 !== black) {
      const at = i - (off === now ? 0 : now / (now - off));
      runs.push(at - edge);
      [edge, black] = [at, !black];
    }
    off = now;
  }
  runs.push(row.length - edge);
  return runs;
}

function ends(row, from, to) {
  let [least, most] = [Infinity, -Infinity];
  for (let i = from; i < to; i++) {
    if (row[i] < least) least = row[i];
    if (row[i] > most) most = row[i];
  }
  return [least, most];
}

function read39(runs, start) {
  if (sign39(runs, start) !== "*") return null;
  const narrow = Math.min(...runs.slice(start, start + 9));
  if (runs[start - 1] < QUIET * narrow) return null;
  let text = "";
  for (let i = start + 10; i + 9 <= runs.length; i += 10) {
    const sign = sign39(runs, i);
    if (sign === "*") return text;
    if (!sign || runs[i - 1] > 5 * narrow) return null;
    text += sign;
  }
  return null;
}

// three of nine are wide, clearly wider than the six others
function sign39(runs, i) {
  const widths = runs.slice(i, i + 9);
  if (widths.length < 9) return null;
  const sorted = widths.slice().sort((a, b) => a - b);
  if (sorted[6] < 1.4 * sorted[5] || sorted[8] > 5 * sorted[0]) return null;
  const bits = widths.reduce((all, w) => 2 * all + (w >= sorted[6] ? 1 : 0), 0);
  return SIGNS_39[WIDE_39.indexOf(bits)] ?? null;
}

function read128(runs, start) {
  const first = value128(runs, start);
  if (first < 103 || first > 105) return null;
  const total = runs.slice(start, start + 6).reduce((a, b) => a + b, 0);
  if (runs[start - 1] < (QUIET * total) / 11) return null;
  const values = [];
  for (let i = start + 6; i + 7 <= runs.length; i += 6) {
    if (isStop(runs, i)) {
      const check = values.pop();
      const sum = values.reduce((all, v, at) => all + v * (at + 1), first);
      return sum % 103 === check ? text128(first, values) : null;
    }
    const value = value128(runs, i);
    if (value < 0 || value > 102) return null;
    values.push(value);
  }
  return null;
}

function value128(runs, i) {
  const widths = modules(runs, i);
  return widths === null ? -1 : WIDTHS_128.indexOf(widths);
}

const isStop = (runs, i) => modules(runs, i) === STOP_128;

// six elements as whole modules; null when they do not make eleven
function modules(runs, i) {
  const widths = runs.slice(i, i + 6);
  const total = widths.reduce((a, b) => a + b, 0);
  const whole = widths.map((w) => Math.round((11 * w) / total));
  return widths.length === 6 && whole.every((w) => w >= 1 && w <= 4) && whole.reduce((a, b) => a + b, 0) === 11
    ? whole.join("")
    : null;
}

function text128(first, values) {
  let set = "ABC"[first - 103];
  let shifted = false;
  let text = "";
  for (const v of values) {
    const now = shifted ? (set === "A" ? "B" : "A") : set;
    shifted = false;
    if (now === "C" && v < 100) text += String(v).padStart(2, "0");
    else if (v === 99 && now !== "C") set = "C";
    else if (v === 100 && now !== "B") set = "B";
    else if (v === 101 && now !== "A") set = "A";
    else if (v === 98 && now !== "C") shifted = true;
    else if (v < 96) text += String.fromCharCode(now === "A" && v >= 64 ? v - 64 : v + 32);
  }
  return text;
}
