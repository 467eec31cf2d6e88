// The exit that is being logged, as the fields and choices show it.
import { clock, clockNow, turn } from "./clock.js";
import { at, choose, chosen, field, hasVideo, problems, rink, video } from "./page.js";
import { START, draw, wait } from "./rink.js";
import { keep } from "./save.js";
import { strength } from "./strength.js";

const FIELDS = ["player", "period", "clock", "video_s", "x_m", "y_m", "end_x_m", "end_y_m", "note"];
const GROUPS = ["way_out", "at_center", "ended", "pressure", "strength", "net_empty"];
const MARKED = ["carry", "pass"]; // ways out that have a mark at center
const CORRECTED = 2000; // ms in which another way out corrects the key; later it begins the next exit. Assumed

export let logging = false; // an exit is being logged
export let editing = null; // the row that is being changed, as it was when that began
let held = false; // the video was paused by us
let began = 0; // when the key of the way out was pressed
let way = ""; // that way out
let ownTeam = ""; // a team name of an edited row that is neither home nor away

export const fast = () => at("fast").checked;

export function teamName() {
  if (ownTeam !== "" && chosen("team") === "") return ownTeam;
  const side = chosen("team");
  return side === "" ? "" : at("s-" + side).value.trim();
}

// What every row says of its game.
export function game() {
  const fields = { team: teamName() };
  for (const name of ["game", "date", "home", "away"]) fields[name] = at("s-" + name).value.trim();
  return fields;
}

export function marksAllowed() {
  const allowed = MARKED.includes(chosen("way_out"));
  at("g-at_center").disabled = !allowed;
  if (!allowed) choose("at_center", "");
}

export function draft() {
  const fields = {};
  for (const name of FIELDS) fields[name] = field(name).value.trim();
  for (const name of GROUPS) fields[name] = chosen(name);
  Object.assign(fields, game());
  if (editing !== null) {
    fields.faceoff = editing.cells.faceoff || "";
    for (const name of ["game", "date", "home", "away", "opponent"]) fields[name] = editing.cells[name] || "";
  }
  for (const name of Object.keys(fields)) if (fields[name] === "") delete fields[name];
  return fields;
}

// A way out, by key or tap. At game speed it ends the exit before, whose end nobody said.
export function wayOut(word) {
  if (logging && fast() && editing === null && performance.now() - began > CORRECTED) {
    choose("way_out", way);
    keep();
  }
  choose("way_out", word);
  way = word;
  begin();
  marksAllowed();
  rink.focus({ preventScroll: true });
}

function begin() {
  if (logging) return;
  logging = true;
  began = performance.now();
  if (!fast() && !video.hidden && !video.paused) {
    video.pause();
    held = true;
  }
  if (fast() && clock !== null && !clock.runs) turn(true);
  for (const [name, value] of Object.entries(now())) field(name).value = value;
  wait(START);
  problems([]);
  draw();
}

// When it is, as the fields of a row say it.
export function now() {
  return { period: at("s-period").value, clock: clockNow(), video_s: hasVideo() ? video.currentTime.toFixed(1) : "" };
}

export function reset() {
  logging = false;
  editing = null;
  ownTeam = "";
  for (const name of FIELDS) field(name).value = "";
  for (const name of ["way_out", "at_center", "ended", "pressure", "net_empty"]) choose(name, "");
  choose("strength", strength);
  wait(START);
  problems([]);
  marksAllowed();
  at("draft-title").textContent = "The exit";
  document.querySelectorAll("tr.now").forEach((r) => r.classList.remove("now"));
  draw();
  if (held) {
    held = false;
    const playing = video.play();
    if (playing) playing.catch(() => {});
  }
  at("desk").focus({ preventScroll: true });
}

// Fills the form from the cells of a row, of one that is being changed or of one that was refused.
export function open(c, row = null) {
  if (logging) reset();
  logging = true;
  editing = row;
  for (const name of FIELDS) field(name).value = c[name] || "";
  for (const name of GROUPS) choose(name, c[name] || "");
  const side = c.team === at("s-home").value.trim() ? "home" : c.team === at("s-away").value.trim() ? "away" : "";
  choose("team", side);
  ownTeam = side === "" ? c.team || "" : "";
  marksAllowed();
  draw();
  // No field has the caret: a key is a command here, as it is for a new exit.
  rink.focus({ preventScroll: true });
}
