// Elements made by hand: text is text, whatever stands in it, and no markup is ever read from a string.

/** An element with properties (`class`, `on` for listeners, everything else an attribute) and children. */
export function el(tag, properties = {}, ...children) {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(properties)) {
    if (value === false || value === null || value === undefined) continue;
    if (name === "on") for (const [event, listener] of Object.entries(value)) made.addEventListener(event, listener);
    else if (name === "value" || name === "checked" || name === "hidden") made[name] = value;
    else made.setAttribute(name, value === true ? "" : value);
  }
  made.append(...children.flat(Infinity).filter((child) => child !== null && child !== undefined && child !== ""));
  return made;
}

export const byId = (id) => document.getElementById(id);

/** Puts `children` in place of what `into` holds. */
export function fill(into, ...children) {
  into.replaceChildren(...children.flat(Infinity).filter((child) => child !== null && child !== undefined));
}

/** Says something to who listens to the page instead of looking at it; the same words again are said again. */
export function say(text) {
  const spoken = byId("spoken");
  spoken.textContent = "";
  setTimeout(() => { spoken.textContent = text; }, 50);
}

/** "1 sheet", "2 sheets". */
export const plural = (count, thing) => `${count} ${thing}${count === 1 ? "" : "s"}`;

/** The first letter large. */
export const capital = (text) => text.charAt(0).toUpperCase() + text.slice(1);
