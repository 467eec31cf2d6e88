// What is saved and taken back: exits, and what happened without one. At game speed the next may begin meanwhile.
import { clock, clockIs, clockSaid, turn } from "./clock.js";
import { draft, editing, fast, game, logging, now, open, reset } from "./form.js";
import { show } from "./list.js";
import { NAMES, at, choose, count, field, make, problems, say, sentence, words } from "./page.js";
import { ask } from "./program.js";

const STOPS = ["icing", "own-zone restart", "goal against", "stopped"]; // the clock stands after these

let busy = false;
export let queue = Promise.resolve(); // what is being saved, one after the other
export const steps = []; // what U takes back: whether a row was saved, and the clock before it

export async function save() {
  if (busy) return;
  if (!logging) {
    say("Press the key of a way out first: 1 to 6.");
    return;
  }
  if (atSpeed()) {
    keep();
    return;
  }
  busy = true;
  try {
    const fields = draft();
    const said = editing === null
      ? await ask("add", fields)
      : await ask("edit", { ...fields, id: String(editing.id), version: String(editing.version) });
    if (said === null) return;
    steps.push({ row: true, clock });
    show(said);
    reset();
    say("Saved: " + words(fields) + ". " + count(said.rows) + ".");
  } finally {
    busy = false;
  }
}

// An exit that is saved while the next one may begin; without a clock it waits for one.
const atSpeed = () => fast() && editing === null && field("clock").value !== "";

export function keep(before = clock) {
  const fields = draft();
  reset();
  log(fields, before);
}

export function log(fields, before) {
  for (const name of Object.keys(fields)) if (fields[name] === "") delete fields[name];
  queue = queue.then(async () => {
    const said = await ask("add", fields, (list) => notSaved(fields, list));
    if (said === null) return;
    steps.push({ row: true, clock: before });
    show(said);
    say("Saved: " + words(fields) + ". " + count(said.rows) + ".");
  });
}

// What was refused at game speed waits for a quiet moment; no key may land in its fields.
function notSaved(fields, list) {
  const line = make("p", "Not saved: " + words(fields) + ". " + list.map((p) => (NAMES[p.field] ? NAMES[p.field] + ": " : "") + sentence(p)).join(" ") + " ");
  const correct = make("button", "Correct it");
  correct.type = "button";
  correct.addEventListener("click", () => {
    if (logging) {
      say("Save or discard the open exit first.");
      return;
    }
    line.remove();
    open(fields);
    problems(list);
  });
  line.appendChild(correct);
  at("kept").appendChild(line);
  say("Not saved: " + words(fields) + ".");
}

// What happened with no exit open: a whistle stops the clock.
function happened(word) {
  choose("ended", "");
  if (word === "" || word === "own") {
    say("Press the key of a way out first: 1 to 6.");
    return;
  }
  log({ ...game(), ...now(), ended: word }, clock);
  if (STOPS.includes(word)) turn(false);
}

// How the open exit ended: at game speed that saves it.
export function ended(word) {
  if (!logging) {
    happened(word);
  } else if (atSpeed() && word !== "") {
    const before = clock;
    if (STOPS.includes(word)) turn(false);
    keep(before);
  }
}

export function faceoff(word) {
  if (logging && !atSpeed()) {
    say("Save or discard the open exit first.");
    return;
  }
  if (logging) keep();
  log({ ...game(), ...now(), faceoff: word }, clock);
  turn(true);
}

export function discard() {
  if (!logging) return;
  reset();
  say("Discarded; nothing was saved.");
}

export function undo() {
  if (busy) return;
  if (logging && fast() && editing === null) {
    discard();
    return;
  }
  queue = queue.then(async () => {
    const step = steps.pop();
    if (step && !step.row) {
      await clockIs(step.clock);
      clockSaid();
      say("Undone: the clock is " + (clock === null ? "not set" : "as it was") + ".");
      return;
    }
    const said = await ask("undo");
    if (said === null) return;
    show(said);
    if (step && step.clock !== clock) await clockIs(step.clock);
    say(said.said + " " + count(said.rows) + ".");
  });
}
