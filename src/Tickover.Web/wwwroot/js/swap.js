// @ts-check
/**
 * Fetches the work of a page without the frame around it and puts it in place of the old.
 * The server renders both with the same components; the address stays what a plain link would have made it.
 */

const fragmentHeader = "X-Tickover-Fragment";

/** The style sheet draws the same line between phone and tablet. */
const phone = window.matchMedia("(max-width: 840px)");

/** The fetch under way; a later one makes it pointless. @type {AbortController | null} */
let underWay = null;

/** Lets links and forms marked data-swap change the work in place. */
export function followSwaps() {
  document.addEventListener("click", (event) => {
    const link = event.target instanceof Element ? event.target.closest("a[data-swap], [data-swap-links] a") : null;
    const plain = event.button === 0 && !event.ctrlKey && !event.metaKey && !event.shiftKey && !event.altKey;
    const address = link?.getAttribute("href") ?? null;
    if (link !== null && plain && address !== null && !address.startsWith("#")) {
      event.preventDefault();
      void swapTo(new URL(address, location.href).href, keyOf(link));
    }
  });
  document.addEventListener("submit", (event) => {
    const form = event.target;
    if (form instanceof HTMLFormElement && form.hasAttribute("data-swap") && form.method === "get") {
      event.preventDefault();
      const address = new URL(form.action);
      address.search = new URLSearchParams(textFields(new FormData(form))).toString();
      void swapTo(address.href, null);
    }
  });
  window.addEventListener("popstate", () => void swapTo(location.href, null, false));
  // A fragment holds the pictures of one screen only: another screen, another fragment.
  phone.addEventListener("change", () => {
    if (document.querySelector("[data-swap-title]")) {
      void swapTo(location.href, null, false);
    }
  });
}

/**
 * @param {string} address where to
 * @param {string | null} focusKey what to give the focus to afterwards, see keyOf
 * @param {boolean} [remember] whether the address becomes a step of the history
 */
export async function swapTo(address, focusKey, remember = true) {
  const bench = document.getElementById("bench");
  if (!bench) {
    location.assign(address);
    return;
  }
  underWay?.abort();
  const mine = (underWay = new AbortController());
  bench.setAttribute("aria-busy", "true");
  try {
    const answer = await fetch(address, { headers: { [fragmentHeader]: phone.matches ? "narrow" : "wide" }, signal: mine.signal });
    const html = await answer.text();
    // A fault page is a whole page: let the browser show it. A trial that cannot be used (422) is still a fragment.
    if (html.startsWith("<!DOCTYPE")) {
      location.assign(address);
      return;
    }
    put(bench, html, focusKey);
    if (remember) {
      history.pushState(null, "", address);
    }
  } catch (fault) {
    if (!(fault instanceof DOMException && fault.name === "AbortError")) {
      location.assign(address);
    }
  } finally {
    if (underWay === mine) {
      bench.removeAttribute("aria-busy");
      underWay = null;
    }
  }
}

/**
 * @param {HTMLElement} bench
 * @param {string} html
 * @param {string | null} focusKey
 */
function put(bench, html, focusKey) {
  const open = [...bench.querySelectorAll("details[open]")].map((d) => d.className).filter((c) => c !== "");
  bench.innerHTML = html;
  for (const name of open) {
    bench.querySelector(`details.${name}`)?.setAttribute("open", "");
  }
  const title = bench.querySelector("[data-swap-title]")?.getAttribute("data-swap-title");
  if (title) {
    document.title = title;
  }
  const next = focusKey === null ? null : bench.querySelector(focusKey);
  if (next instanceof HTMLElement || next instanceof SVGElement) {
    next.focus({ preventScroll: true });
  }
  bench.dispatchEvent(new CustomEvent("tickover:swapped", { bubbles: true }));
}

/**
 * A selector that finds the same control in the next fragment.
 * @param {Element} link
 */
function keyOf(link) {
  const part = link.getAttribute("data-part");
  if (part !== null) {
    return `a[tabindex="0"][data-part="${CSS.escape(part)}"], a[data-part="${CSS.escape(part)}"]`;
  }
  const key = link.getAttribute("data-key");
  if (key !== null) {
    return `[data-key="${CSS.escape(key)}"]`;
  }
  const label = link.getAttribute("aria-label");
  return label === null ? null : `[aria-label="${CSS.escape(label)}"]`;
}

/**
 * @param {FormData} data
 * @returns {[string, string][]}
 */
function textFields(data) {
  /** @type {[string, string][]} */
  const fields = [];
  data.forEach((value, name) => {
    if (typeof value === "string" && value !== "") {
      fields.push([name, value]);
    }
  });
  return fields;
}
