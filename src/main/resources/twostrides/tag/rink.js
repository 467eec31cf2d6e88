// The drawn rink: a click, a tap or the arrows' cross say a place.
import { editing, fast, logging } from "./form.js";
import * as ice from "./ice.js";
import { at, chosen, field, say } from "./page.js";

export const START = { x: -15, y: 0 }; // where the cross waits: in the own zone

export let cross = { ...START };
export let moved = false; // the cross was moved since it appeared: only then Enter sets it

export const turned = () => (chosen("own_goal") === "right" ? -1 : 1);

function metres(p) {
  const along = p.x < 0 ? Math.abs(p.x).toFixed(1) + " m behind center" : p.x.toFixed(1) + " m past center";
  const across = p.y === 0 ? "in the middle" : Math.abs(p.y).toFixed(1) + " m to the " + (p.y > 0 ? "left" : "right");
  return along + ", " + across;
}

export function place(xName, yName) {
  const x = field(xName).value.trim();
  const y = field(yName).value.trim();
  if (x === "" || y === "" || !isFinite(Number(x)) || !isFinite(Number(y))) return null;
  return { x: Number(x), y: Number(y) };
}

export function draw() {
  const t = turned();
  ice.cleared(t);
  const released = place("x_m", "y_m");
  const ended = place("end_x_m", "end_y_m");
  const a = released && ice.onScreen(released, t);
  const b = ended && ice.onScreen(ended, t);
  if (a && b) ice.line(a, b, "path");
  if (a) ice.mark("circle", { cx: a.x, cy: a.y, r: 0.7 }, "released");
  if (b) ice.mark("circle", { cx: b.x, cy: b.y, r: 0.8 }, "finished");
  if (logging && !(released && ended)) ice.cross(ice.onScreen(cross, t), "cross");
  at("l-ended").textContent = logging ? "Ended in" : "No exit open: what happened";
  at("step").textContent = !logging
    ? "Press a way out: 1 to 6"
    : fast() && editing === null ? "How did it end? (a click: where released)" : !released ? "Where was it released?" : !ended ? "Where did it end?" : "Enter saves";
}

// The cross waits at a place that nobody has chosen.
export function wait(p) {
  cross = { ...p };
  moved = false;
}

export function set(p) {
  if (!logging) {
    say("Press the key of a way out first: 1 to 6.");
    return;
  }
  const here = ice.inside(p);
  const first = place("x_m", "y_m") === null;
  if (!first && place("end_x_m", "end_y_m") !== null) {
    say("Both places are set. Backspace takes the last one back, Enter saves.");
    return;
  }
  field(first ? "x_m" : "end_x_m").value = here.x.toFixed(1);
  field(first ? "y_m" : "end_y_m").value = here.y.toFixed(1);
  wait(here);
  say((first ? "Released " : "Ended ") + metres(here) + ".");
  draw();
}

export function takeBack() {
  const which = place("end_x_m", "end_y_m") !== null ? ["end_x_m", "end_y_m"] : ["x_m", "y_m"];
  for (const name of which) field(name).value = "";
  wait(cross);
  draw();
  say("Place taken back.");
}

export function clicked(event) {
  set(ice.pressedAt(event, turned()));
}

export function move(event) {
  cross = ice.moved(cross, event, turned());
  moved = true;
  draw();
  say("Cross " + metres(cross) + ".");
}
