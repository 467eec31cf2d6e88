// What every part of the page uses: its elements, its words, what is wrong. No request to anybody.
// What comes from outside is shown by textContent only.

export const at = (id) => document.getElementById(id);
export const field = (name) => at("f-" + name);
export const video = at("video");
export const rink = at("rink");
export const LEAP = 3; // seconds that comma and full stop move the video; assumed

export function say(words) {
  at("live").textContent = words;
}

export function clear(node) {
  while (node.firstChild) node.removeChild(node.firstChild);
}

export function make(tag, words, kind) {
  const node = document.createElement(tag);
  if (words !== undefined) node.textContent = words;
  if (kind) node.className = kind;
  return node;
}

export function minutes(seconds) {
  const s = Math.floor(seconds);
  return Math.floor(s / 60) + ":" + String(s % 60).padStart(2, "0");
}

export function count(rows) {
  const exits = rows.filter((r) => r.cells.way_out).length;
  const others = rows.length - exits;
  return exits + (exits === 1 ? " exit" : " exits") + (others === 0 ? "" : " and " + others + " more");
}

// What a row is, in a few words.
export function words(c) {
  const what = c.way_out || (c.faceoff ? "face-off " + c.faceoff : c.ended || c.strength);
  return [c.clock, c.team, c.player, what].filter((w) => w).join(", ");
}

export function chosen(name) {
  const radio = document.querySelector("input[name='" + name + "']:checked");
  return radio ? radio.value : "";
}

export function choose(name, value) {
  document.querySelectorAll("input[name='" + name + "']").forEach((r) => { r.checked = r.value === value; });
}

export function hasVideo() {
  return !video.hidden && video.readyState > 0;
}

export const NAMES = {
  __proto__: null,
  way_out: "Way out", at_center: "At center", ended: "Ended in", pressure: "Pressure", strength: "Strength", net_empty: "Empty net",
  faceoff: "Face-off", team: "Team", player: "Player", period: "Period", clock: "Game clock", video_s: "Video second", x_m: "Released, along",
  y_m: "Released, across", end_x_m: "Ended, along", end_y_m: "Ended, across", note: "Note", date: "Date", home: "Home team",
  away: "Away team", game: "Name of the game",
};

export function sentence(p) {
  return "found " + (p.found === "" ? "nothing" : "“" + p.found + "”") + ", expected " + p.expected + ". " + p.toDo;
}

// A problem of a field says what was found and expected there; one of another page is a sentence.
export function problems(list, otherPage) {
  const box = at("problems");
  clear(box);
  document.querySelectorAll(".err").forEach((e) => { e.textContent = ""; });
  document.querySelectorAll("[aria-invalid]").forEach((e) => e.removeAttribute("aria-invalid"));
  for (const p of list) {
    const words = otherPage ? p.toDo : sentence(p);
    box.appendChild(make("p", (NAMES[p.field] ? NAMES[p.field] + ": " : "") + words));
    const beside = at("e-" + p.field);
    if (beside) beside.textContent = words;
    const input = field(p.field) || at("s-" + p.field);
    if (input) input.setAttribute("aria-invalid", "true");
  }
  if (list.length > 0) {
    const first = list.map((p) => field(p.field) || at("s-" + p.field)).find((i) => i);
    if (first) first.focus();
  }
}
