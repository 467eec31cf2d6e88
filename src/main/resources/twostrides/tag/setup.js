// The game and how the page is used: teams, own goal, game speed.
import { resume } from "./clock.js";
import { fast } from "./form.js";
import { at, choose, chosen, say } from "./page.js";
import { ask } from "./program.js";
import { draw } from "./rink.js";

export function teamLabels() {
  for (const side of ["home", "away"]) {
    const name = at("s-" + side).value.trim();
    const label = document.querySelector("input[name='team'][value='" + side + "']").parentNode.querySelector("span");
    label.textContent = name === "" ? side + " (no name yet)" : name;
  }
}

export function sped() {
  draw();
  say(fast() ? "At game speed: the video runs on, and how it ended saves." : "The video is held while an exit is logged; Enter saves.");
  ask("setup", { fast: fast() ? "yes" : "no" });
}

export function flipped() {
  draw();
  say("Own goal " + chosen("own_goal") + ".");
  ask("setup", { own_goal: chosen("own_goal") });
}

export function setUp(setup) {
  document.querySelectorAll("[data-setup]").forEach((i) => {
    if (setup[i.dataset.setup] !== undefined) i.value = setup[i.dataset.setup];
  });
  choose("team", setup.team || "home");
  choose("own_goal", setup.own_goal || "left");
  at("fast").checked = setup.fast === "yes";
  resume(setup);
  teamLabels();
  at("game").open = !(setup.home && setup.away && setup.clock);
}
