// @ts-check
/** Starts the service worker where there may be one (TLS, loopback), and says of a page put by when it was so. */

/** Registers the service worker once the page is at rest. */
export function workOffline() {
  sayAsOf();
  if (!("serviceWorker" in navigator) || !navigator.serviceWorker) {
    return;
  }
  const register = () => void navigator.serviceWorker.register("/sw.js", { updateViaCache: "none" }).catch(() => undefined);
  if (document.readyState === "complete") {
    register();
  } else {
    window.addEventListener("load", register, { once: true });
  }
  document.addEventListener("tickover:notLetIn", () => navigator.serviceWorker.controller?.postMessage("forget"));
}

function sayAsOf() {
  const made = document.documentElement.dataset["asOf"];
  const bench = document.getElementById("bench");
  if (made === undefined || bench === null) {
    return;
  }
  const date = new Date(made);
  const time = date.toLocaleTimeString("en-GB", { hour: "2-digit", minute: "2-digit" });
  const day = date.toDateString() === new Date().toDateString() ? "" : `${date.toLocaleDateString("en-GB", { day: "numeric", month: "long" })}, `;
  const notice = Object.assign(document.createElement("p"), { className: "notice as-of", textContent: `As of ${day}${time}: the server does not answer. What you enter is kept here and will follow.` });
  notice.setAttribute("role", "status");
  bench.prepend(notice);
}
