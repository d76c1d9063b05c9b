// @ts-check
/**
 * Plays the drive of two linked tanks: fuel tilts and crosses, the needle follows. Everything was worked out by the server and lies
 * in the page as lists; this only moves the drawing. Nothing plays by itself; where motion is to be reduced, play goes by whole seconds.
 */

/**
 * @typedef {{ step: number, leftFuel: string[], rightFuel: string[], float: number[], needle: number[], truthTurn: number[], truth: number[],
 *   shown: number[], estimate: number[], band: number[], left: number[], right: number[], flow: number[], side: number[], lamp: number[], covered: number[] }} Film
 */

const still = 0.05;
const stripWidth = 772;
const slowdown = 4;

/** Lets the drive on the page be played. */
export function playGauge() {
  const page = document.querySelector("[data-gauge-page]");
  const text = page?.querySelector("[data-gauge-film]")?.textContent;
  const time = page?.querySelector("[data-gauge-time]");
  const play = page?.querySelector("[data-gauge-play]");
  const slow = page?.querySelector("[data-gauge-slow]");
  if (!page || !text || !(time instanceof HTMLInputElement) || !(play instanceof HTMLButtonElement) || !(slow instanceof HTMLButtonElement)) {
    return;
  }

  /** @type {Film} */
  const film = JSON.parse(text);
  const last = film.truth.length - 1;
  const gentle = matchMedia("(prefers-reduced-motion: reduce)");
  let playing = false;
  let slowly = false;
  let seconds = Number(time.value) * film.step;
  let before = 0;
  page.querySelector("[data-gauge-controls]")?.removeAttribute("hidden");

  /** @param {boolean} on */
  const turn = (on) => {
    playing = on;
    play.textContent = on ? "Pause" : "Play";
    play.setAttribute("aria-pressed", String(on));
  };

  const show = () => {
    const frame = Math.min(last, Math.max(0, Math.round(seconds / film.step)));
    time.value = String(frame);
    time.setAttribute("aria-valuetext", `${Math.round(frame * film.step)} seconds`);
    draw(page, film, frame);
  };

  /** @param {number} now */
  const tick = (now) => {
    if (!playing) {
      return;
    }
    const passed = (now - before) / 1000 / (slowly ? slowdown : 1);
    if (!gentle.matches || passed >= 1) {
      before = now;
      seconds += gentle.matches ? 1 : Math.min(passed, 0.5);
      show();
    }
    if (seconds >= last * film.step) {
      turn(false);
    } else {
      requestAnimationFrame(tick);
    }
  };

  play.addEventListener("click", () => {
    turn(!playing);
    if (playing) {
      seconds = seconds >= last * film.step ? 0 : seconds;
      before = performance.now();
      requestAnimationFrame(tick);
    }
  });
  slow.addEventListener("click", () => {
    slowly = !slowly;
    slow.setAttribute("aria-pressed", String(slowly));
  });
  time.addEventListener("input", () => {
    turn(false);
    seconds = Number(time.value) * film.step;
    show();
  });
}

/** @param {Element} page @param {Film} film @param {number} i */
function draw(page, film, i) {
  set(page, "leftFuel", "points", film.leftFuel[i]);
  set(page, "rightFuel", "points", film.rightFuel[i]);
  set(page, "arm", "y2", film.float[i]);
  set(page, "float", "y", (film.float[i] ?? 0) - 11);
  set(page, "needle", "transform", `rotate(${film.needle[i]} 94 98)`);
  set(page, "truthTurn", "transform", `rotate(${film.truthTurn[i]} 94 98)`);
  set(page, "now", "transform", `translate(${(stripWidth * i) / Math.max(1, film.truth.length - 1)} 0)`);
  say(page, "left", `${fixed(film.left[i])} L`);
  say(page, "right", `${fixed(film.right[i])} L`);
  say(page, "shown", `${fixed(film.shown[i])} L`);
  say(page, "truth", `${fixed(film.truth[i])} L`);
  say(page, "estimate", `${fixed(film.estimate[i])} ± ${fixed(film.band[i])} L`);
  say(page, "clock", String(Math.round(i * film.step)));
  const flow = film.flow[i] ?? 0;
  say(page, "flow", Math.abs(flow) < still ? "nothing crosses" : `${fixed(Math.abs(flow))} L/min to the ${flow > 0 ? "right" : "left"}`);
  set(page, "stream", "visibility", Math.abs(flow) < still ? "hidden" : "visible");
  set(page, "stream", "transform", flow >= 0 ? "" : "rotate(180 400 366)");
  const side = film.side[i] ?? 0;
  say(page, "side", Math.abs(side) < still ? "straight on" : `${Math.abs(side).toFixed(2)} g to the ${side > 0 ? "right" : "left"}`);
  set(page, "push", "visibility", Math.abs(side) < still ? "hidden" : "visible");
  set(page, "push", "transform", side >= 0 ? "" : "rotate(180 400 160)");
  const lit = film.lamp[i] === 1;
  say(page, "lamp", lit ? "lamp lit" : "lamp dark");
  set(page, "lamp", "data-lit", lit ? "1" : "0");
}

/** @param {number | undefined} value */
function fixed(value) {
  return (value ?? 0).toFixed(1);
}

/** @param {Element} page @param {string} key @param {string} attribute @param {string | number | undefined} value */
function set(page, key, attribute, value) {
  page.querySelector(`[data-gauge="${key}"]`)?.setAttribute(attribute, String(value ?? ""));
}

/** @param {Element} page @param {string} key @param {string} words */
function say(page, key, words) {
  const at = page.querySelector(`[data-gauge="${key}"]`);
  if (at) {
    at.textContent = words;
  }
}
