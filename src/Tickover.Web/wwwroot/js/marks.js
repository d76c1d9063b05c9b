// @ts-check
/**
 * Arrows on a photograph, each with a note. A tap sets the tail, the next the point; fields do the same by keyboard.
 * The picture itself is left alone: the arrows go along as a list.
 */

/**
 * Places are parts of the picture's width and height, from its upper left corner.
 * @typedef {{ fromX: number, fromY: number, toX: number, toY: number, note: string }} Mark
 */

const ends = /** @type {const} */ (["fromX", "fromY", "toX", "toY"]);
const endWords = { fromX: "Tail, % across", fromY: "Tail, % down", toX: "Point, % across", toY: "Point, % down" };
/** Digits kept of a place: a tenth of a percent is a pixel or two. */
const digits = 1000;

/**
 * Shows the picture under its field, to be marked.
 * @param {HTMLInputElement} field
 * @param {HTMLCanvasElement} picture
 */
export function markUp(field, picture) {
  /** @type {Mark[]} */
  const marks = [];
  /** @type {{ x: number, y: number } | null} */
  let tail = null;
  const sheet = Object.assign(document.createElement("canvas"), { width: picture.width, height: picture.height });
  const hint = Object.assign(document.createElement("p"), { className: "muted" });
  const list = document.createElement("ol");
  const data = Object.assign(document.createElement("input"), { type: "hidden", name: "marks" });
  sheet.setAttribute("role", "img");
  const show = () => {
    data.value = JSON.stringify(marks);
    hint.textContent = tail === null ? "Arrow: tap where its tail is to be." : "Now tap what it points at.";
    sheet.setAttribute("aria-label", `The photograph, ${marks.length === 1 ? "1 arrow" : `${marks.length} arrows`}`);
    paint(sheet, picture, marks, tail);
  };
  const add = (/** @type {Mark} */ mark) => {
    marks.push(mark);
    list.append(row(mark, marks.length, show));
    show();
  };
  sheet.addEventListener("click", (event) => {
    const place = placeOf(sheet, event);
    if (tail === null) {
      tail = place;
    } else {
      const mark = { fromX: tail.x, fromY: tail.y, toX: place.x, toY: place.y, note: "" };
      tail = null;
      add(mark);
    }
    show();
  });
  const tools = document.createElement("div");
  tools.className = "decide";
  tools.append(
    button("Add an arrow", () => {
      add({ fromX: 0.3, fromY: 0.3, toX: 0.5, toY: 0.5, note: "" });
      /** @type {HTMLElement | null} */ (list.querySelector("li:last-child input"))?.focus();
    }),
    button("Take back the last", () => {
      if (tail !== null) {
        tail = null;
      } else if (marks.pop() !== undefined) {
        list.lastElementChild?.remove();
      }
      show();
    }));
  const box = Object.assign(document.createElement("div"), { className: "marks" });
  hint.setAttribute("role", "status");
  box.append(sheet, hint, tools, list, data);
  field.after(box);
  show();
}

/** @param {Element} field */
export function unmark(field) {
  field.parentElement?.querySelector(":scope > .marks")?.remove();
}

/**
 * @param {HTMLCanvasElement} sheet
 * @param {MouseEvent} event
 */
function placeOf(sheet, event) {
  const box = sheet.getBoundingClientRect();
  return { x: part((event.clientX - box.left) / box.width), y: part((event.clientY - box.top) / box.height) };
}

/** @param {number} value */
function part(value) {
  return Math.round(Math.min(1, Math.max(0, Number.isFinite(value) ? value : 0)) * digits) / digits;
}

/**
 * @param {Mark} mark
 * @param {number} number
 * @param {() => void} show
 */
function row(mark, number, show) {
  const item = document.createElement("li");
  item.append(labelled(`Arrow ${number}: note`, "text", mark.note, (text) => {
    mark.note = text;
    show();
  }));
  const places = document.createElement("details");
  places.append(Object.assign(document.createElement("summary"), { textContent: `Arrow ${number}: where` }));
  for (const end of ends) {
    places.append(labelled(endWords[end], "number", String(Math.round(mark[end] * 1000) / 10), (text) => {
      mark[end] = part(Number(text) / 100);
      show();
    }));
  }
  item.append(places);
  return item;
}

/**
 * The fields have no name: what is sent is the list.
 * @param {string} words
 * @param {string} type
 * @param {string} value
 * @param {(text: string) => void} changed
 */
function labelled(words, type, value, changed) {
  const label = Object.assign(document.createElement("label"), { textContent: words });
  const field = Object.assign(document.createElement("input"), { type, value, autocomplete: "off" });
  if (type === "number") {
    Object.assign(field, { min: "0", max: "100", step: "0.1" });
  }
  field.addEventListener("input", () => changed(field.value));
  label.append(field);
  return label;
}

/** @param {string} words @param {() => void} pressed */
function button(words, pressed) {
  const made = Object.assign(document.createElement("button"), { type: "button", className: "btn", textContent: words });
  made.addEventListener("click", pressed);
  return made;
}

/**
 * @param {HTMLCanvasElement} sheet
 * @param {HTMLCanvasElement} picture
 * @param {Mark[]} marks
 * @param {{ x: number, y: number } | null} tail
 */
function paint(sheet, picture, marks, tail) {
  const context = sheet.getContext("2d");
  if (!context) {
    return;
  }
  const { width, height } = sheet;
  const unit = Math.max(width, height) / 150;
  context.drawImage(picture, 0, 0);
  context.lineCap = context.lineJoin = "round";
  // Dark on light, so that an arrow is seen on any ground.
  for (const [colour, thick] of /** @type {const} */ ([["#ffffff", 2.2], ["#0f1e1e", 1]])) {
    context.strokeStyle = context.fillStyle = colour;
    context.lineWidth = unit * thick;
    for (const mark of marks) {
      arrow(context, mark.fromX * width, mark.fromY * height, mark.toX * width, mark.toY * height, unit);
    }
    if (tail !== null) {
      context.beginPath();
      context.arc(tail.x * width, tail.y * height, unit * thick, 0, 2 * Math.PI);
      context.fill();
    }
  }
}

/**
 * @param {CanvasRenderingContext2D} context
 * @param {number} fromX @param {number} fromY @param {number} toX @param {number} toY
 * @param {number} unit
 */
function arrow(context, fromX, fromY, toX, toY, unit) {
  const angle = Math.atan2(toY - fromY, toX - fromX);
  const barb = unit * 4;
  context.beginPath();
  context.moveTo(fromX, fromY);
  context.lineTo(toX, toY);
  for (const side of [-0.5, 0.5]) {
    context.moveTo(toX, toY);
    context.lineTo(toX - barb * Math.cos(angle + side), toY - barb * Math.sin(angle + side));
  }
  context.stroke();
}
