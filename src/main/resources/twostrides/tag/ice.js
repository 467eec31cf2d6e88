// The drawn rink of a page: from a click or the arrows to a place inside the boards, and marks on it.
const STEP = 0.5; // metres that an arrow moves the cross; assumed
const FAR = 3; // with Shift
const NEAR = 0.1; // with Ctrl: the resolution of a place
const WAYS = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };

const ice = document.getElementById("ice");
const marks = document.getElementById("marks");
const half = { x: Number(ice.dataset.halfLength), y: Number(ice.dataset.halfWidth) };
const corner = Number(ice.dataset.corner);

// A place in the steps of a sheet, inside the boards, which are round in the corners.
export function inside(p) {
  let x = Math.max(-half.x, Math.min(half.x, p.x));
  let y = Math.max(-half.y, Math.min(half.y, p.y));
  const cx = Math.abs(x) - (half.x - corner);
  const cy = Math.abs(y) - (half.y - corner);
  const out = Math.hypot(cx, cy);
  if (cx > 0 && cy > 0 && out > corner) {
    x = Math.sign(x) * (half.x - corner + (cx / out) * corner);
    y = Math.sign(y) * (half.y - corner + (cy / out) * corner);
  }
  const tenth = (v) => Math.round(v * 10) / 10 + 0; // no zero with a minus sign
  return { x: tenth(x), y: tenth(y) };
}

// turned is -1 where the own goal is at the right of the picture, else 1.
export const onScreen = (p, turned) => ({ x: turned * p.x, y: -turned * p.y });

export function pressedAt(event, turned) {
  const p = new DOMPoint(event.clientX, event.clientY).matrixTransform(ice.getScreenCTM().inverse());
  return inside({ x: turned * p.x, y: -turned * p.y });
}

export const isArrow = (key) => WAYS[key] !== undefined;

export function moved(from, event, turned) {
  const by = event.shiftKey ? FAR : event.ctrlKey ? NEAR : STEP;
  const way = WAYS[event.key];
  return inside({ x: from.x + turned * way[0] * by, y: from.y + turned * way[1] * by });
}

export function mark(tag, attributes, kind) {
  const node = document.createElementNS("http://www.w3.org/2000/svg", tag);
  for (const [k, v] of Object.entries(attributes)) node.setAttribute(k, v);
  node.setAttribute("class", kind);
  marks.appendChild(node);
  return node;
}

export function line(a, b, kind) { mark("line", { x1: a.x, y1: a.y, x2: b.x, y2: b.y }, kind); }

export function cross(c, kind) {
  line({ x: c.x - 1.2, y: c.y }, { x: c.x + 1.2, y: c.y }, kind);
  line({ x: c.x, y: c.y - 1.2 }, { x: c.x, y: c.y + 1.2 }, kind);
}

// An empty rink, its ends named.
export function cleared(turned) {
  marks.replaceChildren();
  document.getElementById("end-left").textContent = turned > 0 ? "own goal" : "their goal";
  document.getElementById("end-right").textContent = turned > 0 ? "their goal" : "own goal";
}
