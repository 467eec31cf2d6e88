// The strength of the team that is tagged: it holds from a key on.
import { clock } from "./clock.js";
import { editing, game, logging, now } from "./form.js";
import { choose, chosen } from "./page.js";
import { ask } from "./program.js";
import { log } from "./save.js";

export let strength = ""; // from the last key on, of the team of strongSide
let strongSide = "home";

// The team that the page shows as it opens.
export function opened() {
  strongSide = chosen("team");
}

// Strength in an open exit is the exit's too; it holds from now on, which is when a kill begins or ends.
export function strong(word) {
  if (editing !== null) return;
  const changed = strength !== word && word !== "";
  strength = word;
  if (!logging && changed && clock !== null) log({ ...game(), ...now(), strength: word }, clock);
}

// The other team's strength is the other way round.
export function teamChosen() {
  const side = chosen("team");
  if (editing === null && side !== strongSide) {
    strength = strength === "shorthanded" ? "power play" : strength === "power play" ? "shorthanded" : strength;
    choose("strength", strength);
    strongSide = side;
  }
  ask("setup", { team: side });
}
