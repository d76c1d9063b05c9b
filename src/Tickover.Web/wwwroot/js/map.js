// @ts-check
/** A tap or an arrow key on the map looks at that place. */
import { swapTo } from "./swap.js";

/** Degrees and rpm are kept to what the page shows. */
const rpmStep = 10;
const degreeStep = 0.5;

/**
 * Where the plot lies in the drawing and what its axes mean.
 * @typedef {{ left: number, top: number, width: number, height: number, xFrom: number, xTo: number, yFrom: number, yTo: number, root: boolean }} Axes
 */

/** Lets every map on the page, now and after a swap, be tapped and walked. */
export function tapMaps() {
  document.addEventListener("click", (event) => {
    const map = event.target instanceof Element ? event.target.closest("[data-tapped]") : null;
    const picture = event.target instanceof Element ? event.target.closest("svg[data-plot-left]") : null;
    if (map instanceof HTMLElement && picture instanceof SVGSVGElement) {
      const place = placeOf(picture, event);
      if (place) {
        look(map, place.rpm, place.degrees);
      }
    }
  });
  document.addEventListener("keydown", (event) => {
    if (event.target instanceof HTMLElement && event.target.hasAttribute("data-tapped")) {
      walk(event.target, event);
    }
  });
}

/**
 * @param {SVGSVGElement} picture
 * @param {MouseEvent} event
 */
function placeOf(picture, event) {
  const axes = axesOf(picture);
  const box = picture.getBoundingClientRect();
  const view = picture.viewBox.baseVal;
  const x = view.x + ((event.clientX - box.left) / box.width) * view.width;
  const y = view.y + ((event.clientY - box.top) / box.height) * view.height;
  const across = (x - axes.left) / axes.width;
  const up = 1 - (y - axes.top) / axes.height;
  if (across < 0 || across > 1 || up < 0 || up > 1) {
    return null;
  }
  const rpm = axes.xFrom + across * (axes.xTo - axes.xFrom);
  const degrees = axes.root
    ? (Math.sqrt(axes.yFrom) + up * (Math.sqrt(axes.yTo) - Math.sqrt(axes.yFrom))) ** 2
    : axes.yFrom + up * (axes.yTo - axes.yFrom);
  return { rpm, degrees };
}

/**
 * @param {SVGSVGElement} picture
 * @returns {Axes}
 */
function axesOf(picture) {
  const number = (/** @type {string} */ name) => Number(picture.dataset[name]);
  return {
    left: number("plotLeft"), top: number("plotTop"), width: number("plotWidth"), height: number("plotHeight"),
    xFrom: number("xFrom"), xTo: number("xTo"), yFrom: number("yFrom"), yTo: number("yTo"),
    root: picture.dataset["yScale"] === "sqrt",
  };
}

/**
 * @param {HTMLElement} map
 * @param {number} rpm
 * @param {number} degrees
 */
function look(map, rpm, degrees) {
  const query = new URLSearchParams(map.dataset["query"] ?? "");
  query.set("rpm", String(Math.round(rpm / rpmStep) * rpmStep));
  query.set("throttle", String(Math.min(90, Math.max(degreeStep, Math.round(degrees / degreeStep) * degreeStep))));
  void swapTo(`${map.dataset["page"] ?? ""}?${query}`, "#map");
}

/**
 * @param {HTMLElement} map
 * @param {KeyboardEvent} event
 */
function walk(map, event) {
  const across = event.key === "ArrowRight" ? 1 : event.key === "ArrowLeft" ? -1 : 0;
  const up = event.key === "ArrowUp" ? 1 : event.key === "ArrowDown" ? -1 : 0;
  if (across === 0 && up === 0) {
    return;
  }
  event.preventDefault();
  const rpm = Number(map.dataset["rpm"]) + across * Number(map.dataset["speedStep"]);
  const degrees = Number(map.dataset["throttle"]) + up * Number(map.dataset["openingStep"]);
  look(map, Math.max(100, rpm), degrees);
}
