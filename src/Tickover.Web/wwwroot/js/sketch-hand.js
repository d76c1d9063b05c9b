// @ts-check
/** The hand on a ruled sheet: where a finger is, which corner or side it means, and what is drawn until the server has drawn it. */

const svgSpace = "http://www.w3.org/2000/svg";
/** A finger means a corner within so many CSS pixels, and has not moved yet within so many. */
const reach = 28;
const still = 6;
/** Half the width of what is said beside a dragged corner. */
const room = 140;

/**
 * What a sheet asks of the sketch. Corners are figures as typed: right, up, radius.
 * @typedef {object} Sketch
 * @property {() => string[][]} corners
 * @property {() => string} tap
 * @property {() => number} snap
 * @property {number} most
 * @property {() => void} free the finger is up again and nothing was done
 * @property {(corners: string[][]) => void} moved while a corner is dragged
 * @property {(corners: string[][]) => void} drawn when an act is done
 */

/** @typedef {{ x: number, y: number }} Point */

/**
 * Lays a sheet of glass over the drawing.
 * @param {HTMLElement} sheet
 * @param {Sketch} sketch
 */
export function handOver(sheet, sketch) {
  const picture = sheet.querySelector("svg");
  if (picture === null || sheet.querySelector(".sketch-hand") !== null) {
    return;
  }
  const glass = document.createElementNS(svgSpace, "svg");
  glass.setAttribute("class", "sketch-hand");
  glass.setAttribute("viewBox", picture.getAttribute("viewBox") ?? "");
  glass.setAttribute("aria-hidden", "true");
  sheet.append(glass);
  const board = { left: Number(sheet.dataset["left"]), low: Number(sheet.dataset["low"]), scale: Number(sheet.dataset["scale"]), height: picture.viewBox.baseVal.height };
  /** The corner a finger holds, where it came down, and the corners as they were. @type {{ corner: number, from: Point, moved: boolean, corners: string[][] } | null} */
  let held = null;

  handles(glass, sketch.corners().map((c) => onSheet(c, board)));
  sheet.addEventListener("sketch:draw", () => ghost(glass, sketch.corners(), -1, board));
  glass.addEventListener("pointerdown", (event) => {
    if (!event.isPrimary || event.button !== 0) {
      return;
    }
    const corners = sketch.corners();
    held = { corner: nearest(corners.map((c) => onScreen(onSheet(c, board), glass)), pointOf(event)), from: pointOf(event), moved: false, corners };
    glass.dataset["held"] = "";
    if (held.corner >= 0) {
      glass.setPointerCapture(event.pointerId);
      event.preventDefault();
    }
  });
  glass.addEventListener("pointermove", (event) => {
    if (held === null || held.corner < 0 || (!held.moved && away(held.from, pointOf(event)) <= still)) {
      return;
    }
    held.moved = true;
    const corners = held.corners.map((c, i) => (i === held?.corner ? [...placeOf(event, glass, board, sketch.snap()), c[2] ?? ""] : c));
    if (corners.join() !== held.corners.join()) {
      held.corners = corners;
      ghost(glass, corners, held.corner, board);
      sketch.moved(corners);
    }
  });
  glass.addEventListener("pointerup", (event) => {
    const done = held;
    held = null;
    delete glass.dataset["held"];
    if (done?.moved) {
      sketch.drawn(done.corners);
      return;
    }
    if (done !== null && away(done.from, pointOf(event)) <= still) {
      const corners = tapped(done.corners, done.corner, placeOf(event, glass, board, sketch.snap()), sketch, done.corners.map((c) => onScreen(onSheet(c, board), glass)), pointOf(event));
      if (corners !== null) {
        ghost(glass, corners, -1, board);
        sketch.drawn(corners);
        return;
      }
    }
    sketch.free();
  });
  // The page was scrolled instead, or the finger left the glass.
  glass.addEventListener("pointercancel", () => {
    held = null;
    delete glass.dataset["held"];
    glass.replaceChildren();
    handles(glass, sketch.corners().map((c) => onSheet(c, board)));
  });
}

/**
 * What a tap makes of the corners; null for nothing.
 * @param {string[][]} corners
 * @param {number} corner the corner tapped, or -1
 * @param {string[]} place
 * @param {Sketch} sketch
 * @param {Point[]} seen the corners on the screen
 * @param {Point} at
 * @returns {string[][] | null}
 */
function tapped(corners, corner, place, sketch, seen, at) {
  if (sketch.tap() === "out") {
    return corner >= 0 ? corners.filter((_, i) => i !== corner) : null;
  }
  if (corner >= 0 || corners.length >= sketch.most) {
    return null;
  }
  const made = [...place, ""];
  if (sketch.tap() === "in" && corners.length > 1) {
    const side = nearestSide(seen, at);
    return [...corners.slice(0, side + 1), made, ...corners.slice(side + 1)];
  }
  return [...corners, made];
}

/** @typedef {{ left: number, low: number, scale: number, height: number }} Board */

/** @param {string[]} corner @param {Board} board @returns {Point} */
function onSheet(corner, board) {
  return { x: (Number(corner[0]) - board.left) * board.scale, y: board.height - (Number(corner[1]) - board.low) * board.scale };
}

/** @param {Point} point @param {SVGSVGElement} glass @returns {Point} */
function onScreen(point, glass) {
  const box = glass.getBoundingClientRect();
  const scale = box.width / glass.viewBox.baseVal.width;
  return { x: box.left + point.x * scale, y: box.top + point.y * scale };
}

/**
 * Millimetres where a finger is, snapped and kept on the sheet.
 * @param {MouseEvent} event @param {SVGSVGElement} glass @param {Board} board @param {number} snap
 * @returns {string[]}
 */
function placeOf(event, glass, board, snap) {
  const box = glass.getBoundingClientRect();
  const part = (/** @type {number} */ value) => Math.min(1, Math.max(0, value));
  const { width, height } = glass.viewBox.baseVal;
  const right = board.left + (part((event.clientX - box.left) / box.width) * width) / board.scale;
  const up = board.low + ((1 - part((event.clientY - box.top) / box.height)) * height) / board.scale;
  return [right, up].map((value) => String(Math.round(value / snap) * snap + 0));
}

/** @param {MouseEvent} event @returns {Point} */
function pointOf(event) {
  return { x: event.clientX, y: event.clientY };
}

/** @param {Point} a @param {Point} b */
function away(a, b) {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

/** @param {Point[]} points @param {Point} at @returns {number} the nearest within reach, or -1 */
function nearest(points, at) {
  let best = -1;
  points.forEach((point, i) => {
    const least = points[best];
    if (away(point, at) <= reach && (least === undefined || away(point, at) < away(least, at))) {
      best = i;
    }
  });
  return best;
}

/** @param {Point[]} points @param {Point} at @returns {number} */
function nearestSide(points, at) {
  const far = points.map((from, i) => {
    const to = points[(i + 1) % points.length] ?? from;
    const length = (to.x - from.x) ** 2 + (to.y - from.y) ** 2;
    const part = length === 0 ? 0 : Math.min(1, Math.max(0, ((at.x - from.x) * (to.x - from.x) + (at.y - from.y) * (to.y - from.y)) / length));
    return away(at, { x: from.x + part * (to.x - from.x), y: from.y + part * (to.y - from.y) });
  });
  return far.indexOf(Math.min(...far));
}

/** Where a corner is a finger drags it instead of scrolling the page. @param {SVGSVGElement} glass @param {Point[]} points */
function handles(glass, points) {
  const scale = glass.getBoundingClientRect().width / glass.viewBox.baseVal.width || 1;
  for (const point of points) {
    glass.append(made("circle", { class: "handle", cx: point.x, cy: point.y, r: reach / scale }));
  }
}

/**
 * The shape as the hand left it, until the server has drawn it.
 * @param {SVGSVGElement} glass @param {string[][]} corners @param {number} held @param {Board} board
 */
function ghost(glass, corners, held, board) {
  const points = corners.map((c) => onSheet(c, board));
  glass.replaceChildren(made("polygon", { class: "ghost", points: points.map((p) => `${p.x},${p.y}`).join(" ") }));
  points.forEach((point, i) => glass.append(made("circle", { class: i === held ? "ghost held" : "ghost", cx: point.x, cy: point.y, r: 7 })));
  const [corner, point] = [corners[held], points[held]];
  if (corner !== undefined && point !== undefined) {
    const side = (/** @type {number} */ way) => {
      const other = corners[(held + way + corners.length) % corners.length] ?? corner;
      return Math.round(Math.hypot(Number(other[0]) - Number(corner[0]), Number(other[1]) - Number(corner[1])));
    };
    const words = made("text", { class: "ghost", x: Math.min(Math.max(point.x, room), glass.viewBox.baseVal.width - room), y: point.y < 60 ? point.y + 50 : point.y - 34, "text-anchor": "middle" });
    words.textContent = `${corner[0]}, ${corner[1]} · sides ${side(-1)} and ${side(1)}`;
    glass.append(words);
  }
  handles(glass, points);
}

/** @param {string} name @param {Record<string, string | number>} attributes @returns {SVGElement} */
function made(name, attributes) {
  const element = document.createElementNS(svgSpace, name);
  for (const [key, value] of Object.entries(attributes)) {
    element.setAttribute(key, String(value));
  }
  return /** @type {SVGElement} */ (element);
}
