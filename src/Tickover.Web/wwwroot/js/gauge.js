// @ts-check
/** A gauge on the road: two tanks from behind, the fuel in them, the needle and the truth, played or dragged through. */

/**
 * @typedef {{ left: number, width: number, height: number, floor: number }} Tank
 * @typedef {object} Film
 * @property {number[]} seconds
 * @property {number[]} left
 * @property {number[]} right
 * @property {number[]} leftLevel
 * @property {number[]} rightLevel
 * @property {number[]} leftWave
 * @property {number[]} rightWave
 * @property {number[]} slope
 * @property {number[]} flow
 * @property {number[]} sender
 * @property {number[]} needle
 * @property {number[]} lamp
 * @property {number[]} covered
 * @property {number[]} needleLitres
 * @property {number} capacity
 * @property {[Tank, Tank]} tanks
 * @property {boolean} senderIsLeft
 * @property {number} senderLeft
 * @property {number} pivot
 * @property {number} arm
 * @property {number} bore
 */

const middle = 400;
const floorAt = 318;

/** Starts every gauge on the page. */
export function playGauges() {
  for (const root of document.querySelectorAll("[data-gauge]")) {
    const data = root.querySelector("[data-gauge-film]")?.textContent;
    if (root instanceof HTMLElement && data) {
      start(root, /** @type {Film} */ (JSON.parse(data)));
    }
  }
}

/**
 * @param {HTMLElement} root
 * @param {Film} film
 */
function start(root, film) {
  const moment = root.querySelector("[data-gauge-moment]");
  const play = root.querySelector("[data-gauge-play]");
  const slow = root.querySelector("[data-gauge-slow]");
  const run = root.querySelector("[data-gauge-run]");
  if (!(moment instanceof HTMLInputElement) || !(play instanceof HTMLButtonElement) || !(slow instanceof HTMLButtonElement)) {
    return;
  }
  run?.removeAttribute("hidden");
  const scale = prepare(root, film);
  let playing = false;
  let slowly = false;
  let before = 0;
  let at = film.seconds[Number(moment.value)] ?? 0;
  show(root, film, scale, Number(moment.value));

  /** @param {number} now */
  const frame = (now) => {
    if (!playing) {
      return;
    }
    const end = film.seconds[film.seconds.length - 1] ?? 0;
    at += (Math.min(100, now - before) / 1000) * (slowly ? 1 : 5);
    before = now;
    if (at >= end) {
      at = end;
      stop();
    }
    const k = nearest(film.seconds, at);
    moment.value = String(k);
    show(root, film, scale, k);
    if (playing) {
      requestAnimationFrame(frame);
    }
  };
  const stop = () => {
    playing = false;
    play.textContent = "Play";
    play.setAttribute("aria-pressed", "false");
  };
  play.addEventListener("click", () => {
    if (playing) {
      stop();
      return;
    }
    playing = true;
    play.textContent = "Pause";
    play.setAttribute("aria-pressed", "true");
    at = Number(moment.value) >= film.seconds.length - 1 ? 0 : (film.seconds[Number(moment.value)] ?? 0);
    before = performance.now();
    // Who asked for less motion gets a step of five seconds a press instead of a film.
    if (matchMedia("(prefers-reduced-motion: reduce)").matches) {
      const k = nearest(film.seconds, at + 5);
      moment.value = String(k);
      show(root, film, scale, k);
      stop();
      return;
    }
    requestAnimationFrame(frame);
  });
  slow.addEventListener("click", () => {
    slowly = !slowly;
    slow.setAttribute("aria-pressed", String(slowly));
    slow.textContent = slowly ? "Quick" : "Slow";
  });
  moment.addEventListener("input", () => {
    stop();
    show(root, film, scale, Number(moment.value));
  });
}

/**
 * @param {number[]} seconds
 * @param {number} time
 */
function nearest(seconds, time) {
  const step = (seconds[1] ?? 1) - (seconds[0] ?? 0);
  return Math.max(0, Math.min(seconds.length - 1, Math.round(time / step)));
}

/**
 * Draws what does not move and gives mm to units of the picture.
 * @param {HTMLElement} root
 * @param {Film} film
 */
function prepare(root, film) {
  const reach = Math.max(...film.tanks.map((t) => Math.abs(t.left) + t.width / 2)) + 60;
  const tallest = Math.max(...film.tanks.map((t) => t.height));
  const scale = Math.min(370 / reach, 190 / tallest);
  const picture = root.querySelector("[data-gauge-picture]");
  if (picture) {
    const boxes = film.tanks.map((t) => box(t, scale));
    const [l, r] = boxes;
    const inner = l && r ? `M${l.x + l.w - 16} ${floorAt}V346H${r.x + 16}V${floorAt}` : "";
    picture.innerHTML = `
<path d="M28 372V232C28 150 40 96 96 88L232 76C262 40 300 24 400 24S538 40 568 76L704 88C760 96 772 150 772 232V372" fill="none" stroke="var(--line)" stroke-width="2"/>
<rect x="20" y="330" width="56" height="44" rx="8" fill="var(--sunken)" stroke="var(--line)"/><rect x="724" y="330" width="56" height="44" rx="8" fill="var(--sunken)" stroke="var(--line)"/>
<path d="${inner}" fill="none" stroke="var(--metal-edge)" stroke-width="20" stroke-linejoin="round"/><path d="${inner}" fill="none" stroke="var(--fuel)" stroke-width="14" stroke-linejoin="round"/>
${boxes.map((b, i) => `<rect x="${b.x}" y="${b.y}" width="${b.w}" height="${b.h}" rx="10" fill="var(--surface)"/><clipPath id="gauge-clip-${i}"><rect x="${b.x}" y="${b.y}" width="${b.w}" height="${b.h}" rx="10"/></clipPath><path data-fuel="${i}" clip-path="url(#gauge-clip-${i})" fill="var(--fuel)" stroke="var(--fuel-edge)" stroke-width="3"/><rect x="${b.x}" y="${b.y}" width="${b.w}" height="${b.h}" rx="10" fill="none" stroke="var(--metal-edge)" stroke-width="3"/><text data-litres="${i}" x="${b.x + b.w / 2}" y="${b.y - 10}" font-size="20" font-weight="700" text-anchor="middle"></text>`).join("")}
<path data-arm fill="none" stroke="var(--ink)" stroke-width="4" stroke-linejoin="round"/><rect data-float width="36" height="20" rx="9" fill="var(--surface)" stroke="var(--ink)" stroke-width="3"/>
<path data-pull fill="none" stroke="var(--mark)" stroke-width="6" stroke-linecap="round" stroke-linejoin="round"/><text data-pull-words x="400" y="104" font-size="18" font-weight="700" text-anchor="middle"></text>
<path data-flow fill="none" stroke="var(--ink)" stroke-width="3.5" stroke-linecap="round" stroke-linejoin="round"/><text data-flow-words x="400" y="392" font-size="17" text-anchor="middle"></text>`;
  }
  return scale;
}

/**
 * @param {Tank} tank
 * @param {number} scale
 */
function box(tank, scale) {
  return { x: middle - (tank.left + tank.width / 2) * scale, y: floorAt - tank.height * scale, w: tank.width * scale, h: tank.height * scale };
}

/**
 * @param {HTMLElement} root
 * @param {Film} film
 * @param {number} scale
 * @param {number} k
 */
function show(root, film, scale, k) {
  const get = (/** @type {number[]} */ list) => list[k] ?? 0;
  const slope = get(film.slope);
  film.tanks.forEach((tank, i) => {
    const level = get(i === 0 ? film.leftLevel : film.rightLevel);
    const wave = get(i === 0 ? film.leftWave : film.rightWave);
    root.querySelector(`[data-fuel="${i}"]`)?.setAttribute("d", surface(tank, level, wave, slope, scale));
    const litres = root.querySelector(`[data-litres="${i}"]`);
    if (litres) {
      litres.textContent = `${i === 0 ? "Left" : "Right"} ${get(i === 0 ? film.left : film.right).toFixed(1)} L`;
    }
  });
  swing(root, film, scale, get(film.sender));
  pull(root, slope, get(film.flow), film.bore);
  const truth = get(film.left) + get(film.right);
  dial(root, "needle", get(film.needle), false);
  dial(root, "truth", truth / film.capacity, true);
  words(root, "[data-gauge-needle]", `${get(film.needleLitres).toFixed(1)} L`);
  words(root, "[data-gauge-truth]", `${truth.toFixed(1)} L`);
  words(root, "[data-gauge-time]", `${get(film.seconds).toFixed(0)} s`);
  const lamp = root.querySelector("[data-gauge-lamp]");
  lamp?.classList.toggle("lit", get(film.lamp) === 1);
  words(root, "[data-gauge-lamp]", `Low-fuel lamp: ${get(film.lamp) === 1 ? "LIT" : "off"}${get(film.covered) === 1 ? "" : ". The pick-up draws air"}`);
  const end = film.seconds[film.seconds.length - 1] || 1;
  for (const line of root.querySelectorAll("[data-gauge-now]")) {
    line.setAttribute("d", `M${((Number(line.getAttribute("data-gauge-now")) * get(film.seconds)) / end).toFixed(1)} 0V140`);
  }
  root.querySelector("[data-gauge-moment]")?.setAttribute("aria-valuetext", `${get(film.seconds).toFixed(0)} seconds: needle ${get(film.needleLitres).toFixed(1)}, truth ${truth.toFixed(1)} litres`);
}

/**
 * @param {Tank} tank
 * @param {number} level
 * @param {number} wave
 * @param {number} slope
 * @param {number} scale
 */
function surface(tank, level, wave, slope, scale) {
  const points = [];
  for (let i = 0; i <= 12; i++) {
    const left = tank.width * (0.5 - i / 12) * 1.04;
    const up = level - slope * left + wave * Math.sin((Math.PI * left) / tank.width);
    points.push(`${(middle - (tank.left + left) * scale).toFixed(1)} ${(floorAt - up * scale).toFixed(1)}`);
  }
  const b = box(tank, scale);
  return `M${points.join("L")}L${(b.x + b.w + 9).toFixed(1)} ${floorAt + 9}L${(b.x - 9).toFixed(1)} ${floorAt + 9}Z`;
}

/**
 * @param {HTMLElement} root
 * @param {Film} film
 * @param {number} scale
 * @param {number} level
 */
function swing(root, film, scale, level) {
  const tank = film.tanks[film.senderIsLeft ? 0 : 1];
  const b = box(tank, scale);
  const inward = film.senderIsLeft ? 1 : -1;
  const x = middle - (tank.left + film.senderLeft) * scale;
  const y = floorAt - level * scale;
  const pivotX = Math.max(b.x + 12, Math.min(b.x + b.w - 12, x + inward * film.arm * 0.7 * scale));
  const pivotY = floorAt - film.pivot * scale;
  root.querySelector("[data-arm]")?.setAttribute("d", `M${pivotX} ${b.y - 6}V${pivotY}L${x} ${y}`);
  root.querySelector("[data-float]")?.setAttribute("transform", `translate(${x - 18},${Math.min(floorAt - 20, y - 10)})`);
}

/**
 * @param {HTMLElement} root
 * @param {number} slope
 * @param {number} flow
 * @param {number} bore
 */
function pull(root, slope, flow, bore) {
  const length = Math.min(110, Math.abs(slope) * 260);
  const way = slope >= 0 ? 1 : -1;
  const tip = 400 + way * length;
  root.querySelector("[data-pull]")?.setAttribute("d", Math.abs(slope) < 0.02 ? "" : `M${400 - way * length} 124H${tip}M${tip - way * 15} 111l${way * 15} 13l${-way * 15} 13`);
  words(root, "[data-pull-words]", Math.abs(slope) < 0.02 ? "" : `${(Math.abs(slope)).toFixed(2)} g pulls the fuel to the ${way > 0 ? "right" : "left"}`);
  const there = Math.abs(flow) < 0.05 ? 0 : Math.sign(flow);
  root.querySelector("[data-flow]")?.setAttribute("d", there === 0 ? "" : `M${400 - there * 60} 346H${400 + there * 60}M${400 + there * 48} 336l${there * 12} 10l${-there * 12} 10`);
  words(root, "[data-flow-words]", there === 0 ? `cross-pipe ${bore.toFixed(0)} mm: still` : `cross-pipe ${bore.toFixed(0)} mm: ${Math.abs(flow).toFixed(1)} L/min to the ${there > 0 ? "right" : "left"}`);
}

/**
 * @param {HTMLElement} root
 * @param {string} which
 * @param {number} part
 * @param {boolean} filled
 */
function dial(root, which, part, filled) {
  const face = root.querySelector(`[data-gauge-dial="${which}"]`);
  if (!face) {
    return;
  }
  const at = (/** @type {number} */ share, /** @type {number} */ radius) => {
    const angle = ((share - 0.5) * 124 * Math.PI) / 180;
    return `${(94 + radius * Math.sin(angle)).toFixed(1)} ${(98 - radius * Math.cos(angle)).toFixed(1)}`;
  };
  const held = Math.max(-0.06, Math.min(1.06, part));
  const ticks = [0, 0.25, 0.5, 0.75, 1].map((s) => `M${at(s, 76)}L${at(s, s % 0.5 === 0 ? 61 : 67)}`).join("");
  const hand = filled ? `<path d="M${at(0, 50)}A50 50 0 0 1 ${at(Math.max(0.005, held), 50)}" fill="none" stroke="var(--fuel-edge)" stroke-width="26"/><path d="M${at(0, 50)}A50 50 0 0 1 ${at(Math.max(0.005, held), 50)}" fill="none" stroke="var(--fuel)" stroke-width="20"/>` : `<path d="M94 98L${at(held, 68)}" stroke="var(--ink)" stroke-width="5" stroke-linecap="round"/><circle cx="94" cy="98" r="9" fill="var(--ink)"/>`;
  face.innerHTML = `<path d="M${at(0, 76)}A76 76 0 0 1 ${at(1, 76)}${ticks}" fill="none" stroke="var(--ink)" stroke-width="2.5"/><text x="14" y="64" font-size="16" font-weight="700" text-anchor="middle">E</text><text x="174" y="64" font-size="16" font-weight="700" text-anchor="middle">F</text><text x="94" y="15" font-size="16" font-weight="700" text-anchor="middle">½</text>${hand}`;
}

/**
 * @param {HTMLElement} root
 * @param {string} where
 * @param {string} text
 */
function words(root, where, text) {
  const place = root.querySelector(where);
  if (place && place.textContent !== text) {
    place.textContent = text;
  }
}
