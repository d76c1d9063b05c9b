// @ts-check
/** One entry as the tray's list shows it: what it is, when and where it was made, what the server said, what was typed. */

/** Fields that tell a person nothing. */
const unsaid = new Set(["version", "back", "at", "key"]);

/**
 * @param {import("./store.js").Entry} entry
 * @returns {HTMLLIElement}
 */
export function card(entry) {
  const item = document.createElement("li");
  item.dataset["entry"] = entry.key;
  item.append(text("h3", entry.words), text("p", `${when(entry.at)}, ${entry.title}`, "muted"));
  if (entry.answer !== undefined && entry.state !== "waiting") {
    item.append(text("p", entry.answer, "said"));
  }
  item.append(typed(entry), buttons(entry));
  return item;
}

/** @param {import("./store.js").Entry} entry */
function typed(entry) {
  const list = document.createElement("dl");
  for (const [name, value] of entry.fields) {
    if (!unsaid.has(name) && value !== "") {
      list.append(text("dt", name), text("dd", typeof value === "string" ? value : `${value.name}, ${Math.ceil(value.size / 1024)} kB`));
    }
  }
  return list;
}

/** @param {import("./store.js").Entry} entry */
function buttons(entry) {
  const row = document.createElement("div");
  row.className = "decide";
  if (entry.state === "off") {
    row.append(button("back", "Put it back", entry.words));
    return row;
  }
  if (entry.state === "look") {
    const link = Object.assign(document.createElement("a"), { className: "btn", textContent: "Open the page", href: sameOrigin(entry.href ?? entry.page) });
    link.setAttribute("aria-label", `Open the page: ${entry.words}`);
    row.append(link, button("again", "Send again", entry.words));
  }
  row.append(button("off", "Take it off", entry.words));
  return row;
}

/** @param {string} address */
function sameOrigin(address) {
  const url = new URL(address, location.href);
  return url.origin === location.origin ? url.href : location.origin;
}

/**
 * @param {string} doing
 * @param {string} word
 * @param {string} about
 */
function button(doing, word, about) {
  const made = Object.assign(document.createElement("button"), { type: "button", className: "btn", textContent: word });
  made.dataset["do"] = doing;
  made.setAttribute("aria-label", `${word}: ${about}`);
  return made;
}

/**
 * @param {string} tag
 * @param {string} words
 * @param {string} [className]
 */
function text(tag, words, className) {
  const made = document.createElement(tag);
  made.textContent = words;
  if (className !== undefined) {
    made.className = className;
  }
  return made;
}

/** @param {number} at */
function when(at) {
  const date = new Date(at);
  const today = new Date().toDateString() === date.toDateString();
  const time = date.toLocaleTimeString("en-GB", { hour: "2-digit", minute: "2-digit" });
  return today ? time : `${date.toLocaleDateString("en-GB", { day: "numeric", month: "long" })}, ${time}`;
}
