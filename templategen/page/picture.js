// A picture as the interface gives it, ["g", {attributes}, child, ...], made into SVG: only what is known here is made.

const SVG = "http://www.w3.org/2000/svg";
const TAGS = new Set(["svg", "g", "path", "circle", "text", "tspan"]);
const ATTRIBUTES = new Set([
  "viewBox", "d", "cx", "cy", "r", "x", "y", "transform", "fill", "stroke", "stroke-width", "stroke-linecap",
  "stroke-linejoin", "stroke-dasharray", "font-size", "font-weight", "text-anchor", "class", "data-about",
]);

export function picture(tree) {
  const [tag, attributes, ...children] = tree;
  if (!TAGS.has(tag)) throw new Error(`no such thing in a picture: ${tag}`);
  const made = document.createElementNS(SVG, tag);
  for (const [name, value] of Object.entries(attributes)) if (ATTRIBUTES.has(name)) made.setAttribute(name, value);
  for (const child of children) made.append(typeof child === "string" ? child : picture(child));
  return made;
}

/** A figure: the picture, its words for who cannot see it, its title below; no wider than its own mm allow. */
export function figure({ title, spoken, scale, picture: tree }, remPerMm = 0.27) {
  const drawn = picture(tree);
  drawn.setAttribute("role", "img");
  drawn.setAttribute("aria-label", spoken ? `${title}. ${spoken}` : title);
  const [, , wide] = (tree[1].viewBox || "0 0 100 100").split(" ").map(Number);
  drawn.style.width = `${(wide * remPerMm).toFixed(2)}rem`;
  const caption = document.createElement("figcaption");
  caption.textContent = scale ? `${title}, ${scale}` : title;
  const made = document.createElement("figure");
  made.append(drawn, caption);
  return made;
}
