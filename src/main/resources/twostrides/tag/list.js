// What was tagged so far, with Edit and Delete.
import { clock, clockSaid, tick } from "./clock.js";
import { editing, open, reset } from "./form.js";
import { LEAP, at, clear, count, hasVideo, make, minutes, say, video } from "./page.js";
import { ask } from "./program.js";
import { steps } from "./save.js";

export let state = { rows: [], setup: {}, players: [] };

export function show(said) {
  state = said;
  at("sheet").textContent = said.sheet;
  at("warning").textContent = said.warning;
  at("warning").hidden = said.warning === "";
  at("count").textContent = said.rows.length === 0 ? "Nothing yet." : count(said.rows) + " saved in " + said.sheet + ", the newest first.";
  const players = at("players");
  clear(players);
  for (const p of said.players) {
    const option = document.createElement("option");
    option.value = p;
    players.appendChild(option);
  }
  const rows = at("rows");
  clear(rows);
  for (const row of [...said.rows].reverse()) rows.appendChild(line(row));
  clockSaid();
  tick();
}

function line(row) {
  const c = row.cells;
  const tr = document.createElement("tr");
  tr.classList.toggle("now", editing !== null && editing.id === row.id);
  const first = make("th", "P" + (c.period || "?") + " " + (c.clock || ""));
  first.scope = "row";
  tr.appendChild(first);
  const change = make("td", undefined, "w");
  const named = (c.way_out ? " the exit at " : " what was at ") + (c.clock || "?") + " of period " + (c.period || "?");
  const edit = make("button", "Edit");
  edit.type = "button";
  edit.setAttribute("aria-label", "Edit" + named);
  edit.addEventListener("click", () => load(row, tr));
  const remove = make("button", "Delete");
  remove.type = "button";
  remove.setAttribute("aria-label", "Delete" + named);
  remove.addEventListener("click", () => takeOut(row));
  change.append(edit, " ", remove);
  tr.appendChild(change);
  tr.appendChild(make("td", c.team, "name"));
  tr.appendChild(make("td", c.player || "", "name"));
  tr.appendChild(make("td", c.way_out || "", "w"));
  tr.appendChild(make("td", c.at_center || "", "w"));
  tr.appendChild(make("td", [c.ended, c.faceoff ? "face-off " + c.faceoff : ""].filter((w) => w).join(", "), "w"));
  tr.appendChild(make("td", c.strength || "", "w"));
  tr.appendChild(make("td", c.x_m ? c.x_m + ", " + c.y_m : "", "w"));
  tr.appendChild(make("td", c.end_x_m ? c.end_x_m + ", " + c.end_y_m : "", "w"));
  const where = make("td", undefined, "w");
  if (c.video_s) {
    const go = make("button", minutes(Number(c.video_s)));
    go.type = "button";
    go.setAttribute("aria-label", "Show second " + c.video_s + " of the video");
    go.addEventListener("click", () => { if (hasVideo()) video.currentTime = Math.max(0, Number(c.video_s) - LEAP); });
    where.appendChild(go);
  }
  tr.appendChild(where);
  return tr;
}

function load(row, tr) {
  open(row.cells, row);
  at("draft-title").textContent = "Change what was at " + (row.cells.clock || "?");
  tr.classList.add("now");
  at("form").scrollIntoView({ block: "nearest" });
  say("Changing what was at " + (row.cells.clock || "?") + ". L leads to its clock, Enter saves, Escape leaves it as it was.");
}

async function takeOut(row) {
  const said = await ask("delete", { id: String(row.id), version: String(row.version) });
  if (said === null) return;
  if (editing !== null && editing.id === row.id) reset();
  steps.push({ row: true, clock });
  show(said);
  at("desk").focus({ preventScroll: true });
  say("Deleted. U brings it back. " + count(said.rows) + ".");
}
