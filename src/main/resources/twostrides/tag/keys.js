// What each key does.
import { fast, logging, teamName, wayOut } from "./form.js";
import { isArrow } from "./ice.js";
import { LEAP, NAMES, at, choose, chosen, field, hasVideo, rink, say, video } from "./page.js";
import { cross, move, moved, place, set, takeBack, turned } from "./rink.js";
import { discard, ended, faceoff, save, undo } from "./save.js";
import { strong, teamChosen } from "./strength.js";
import { flipped, sped } from "./setup.js";

// What a key does: the group that it chooses in, and the word.
const CHOICES = {
  __proto__: null,
  1: ["way_out", "carry"], 2: ["way_out", "pass"], 3: ["way_out", "chip"], 4: ["way_out", "long clearance"],
  5: ["way_out", "missed pass"], 6: ["way_out", "kept in"],
  q: ["at_center", "gained"], w: ["at_center", "released short"], e: ["at_center", "lost short"],
  r: ["at_center", "brought back"], t: ["at_center", "stopped"],
  a: ["ended", "icing"], s: ["ended", "own-zone restart"], d: ["ended", "opponent"], f: ["ended", "own"],
  g: ["ended", "goal against"], h: ["ended", "stopped"],
  z: ["pressure", "none"], x: ["pressure", "light"], c: ["pressure", "heavy"],
  v: ["strength", "even"], b: ["strength", "shorthanded"], n: ["strength", "power play"],
  7: ["net_empty", "none"], 8: ["net_empty", "own"], 9: ["net_empty", "opponent"], 0: ["net_empty", "both"],
  j: ["team", "home"], k: ["team", "away"],
};
const SPEEDS = [0.25, 0.5, 0.75, 1, 1.5, 2];

const typing = (e) => e.matches("input[type='text'], input[type='number'], input[type='file']");

function enter(target) {
  if (target === rink && logging && moved && !(place("x_m", "y_m") && place("end_x_m", "end_y_m"))) set(cross);
  else save();
}

function spaced(target) {
  if (video.hidden || target.matches("button, a, summary, video, input")) return false;
  if (video.paused) {
    const playing = video.play();
    if (playing) playing.catch(() => {});
  } else {
    video.pause();
  }
  return true;
}

function faster(way) {
  const now = SPEEDS.indexOf(video.playbackRate);
  const next = SPEEDS[Math.max(0, Math.min(SPEEDS.length - 1, (now < 0 ? 3 : now) + way))];
  video.playbackRate = next;
  say("Speed " + next + ".");
}

function single(key, target) {
  if (CHOICES[key]) {
    const [group, word] = CHOICES[key];
    if (group === "at_center" && at("g-at_center").disabled) {
      say("Only a carry or a pass has a mark at center.");
      return true;
    }
    if (group === "way_out") {
      wayOut(word);
      say(NAMES[group] + ": " + word + ".");
      return true;
    }
    // The same key again takes an optional word back.
    const again = chosen(group) === word && group !== "team" && (logging || group !== "strength");
    choose(group, again ? "" : word);
    if (group === "team") teamChosen();
    say(again ? NAMES[group] + ": not known." : NAMES[group] + ": " + (group === "team" ? teamName() : word) + ".");
    if (group === "ended") ended(again ? "" : word);
    if (group === "strength") strong(again ? "" : word);
    return true;
  }
  switch (key) {
    case "u": undo(); return true;
    case "m": faceoff("won"); return true;
    case "i": faceoff("lost"); return true;
    case "/": at("fast").checked = !fast(); sped(); return true;
    case "o": at("game").open = true; at("s-clock").focus(); return true;
    case "p": field("player").focus(); return true;
    case "l": if (logging) field("clock").select(); return logging;
    case "y": choose("own_goal", turned() > 0 ? "right" : "left"); flipped(); return true;
    case ",": if (hasVideo()) video.currentTime = Math.max(0, video.currentTime - LEAP); return true;
    case ".": if (hasVideo()) video.currentTime += LEAP; return true;
    case "-": faster(-1); return true;
    case "+": case "=": faster(1); return true;
    case " ": return spaced(target);
    default: return false;
  }
}

export function pressed(event) {
  if (event.altKey || event.metaKey || event.isComposing) return;
  const target = event.target;
  if (event.key === "Escape") {
    discard();
    return;
  }
  if (target === rink && isArrow(event.key) && logging) {
    move(event);
    event.preventDefault();
    return;
  }
  if (event.ctrlKey || typing(target)) return;
  if (event.key === "Enter" && !target.matches("button, a, summary, video")) {
    event.preventDefault();
    if (!event.repeat) enter(target);
    return;
  }
  if (event.key === "Backspace" && target === rink && logging) {
    takeBack();
    event.preventDefault();
    return;
  }
  if (event.repeat || !at("keys").checked) return;
  if (single(event.key.toLowerCase(), target)) event.preventDefault();
}
