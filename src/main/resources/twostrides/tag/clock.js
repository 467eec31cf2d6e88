// The game clock: it runs with the video from where it was set.
import { editing, logging, teamName } from "./form.js";
import { state } from "./list.js";
import { at, field, hasVideo, minutes, say, video } from "./page.js";
import { ask } from "./program.js";
import { steps } from "./save.js";

export let clock = null; // what the game clock showed at a second of the video, and whether it runs

function seconds(clock) {
  const m = /^(\d{1,3}):([0-5]\d(?:\.\d+)?)$/.exec(clock.trim());
  if (m) return 60 * Number(m[1]) + Number(m[2]);
  return /^\d+(\.\d+)?$/.test(clock.trim()) ? Number(clock) : NaN;
}

// The clock that was set, less the seconds of video since; a whistle stops it, a face-off starts it.
function clockLeft() {
  if (clock === null) return NaN;
  const since = clock.runs && hasVideo() ? video.currentTime - clock.video : 0;
  return Math.max(0, clock.left - since);
}

export function clockNow() {
  const left = clockLeft();
  return isFinite(left) ? minutes(left) : "";
}

export function clockIs(set) {
  clock = set;
  tick();
  const tenths = (s) => minutes(s) + (s % 1 < 0.05 ? "" : "." + Math.min(9, Math.round((s % 1) * 10)));
  return ask("setup", set === null
    ? { clock: "", clock_video_s: "", clock_runs: "" }
    : { clock: tenths(set.left), clock_video_s: set.video.toFixed(1), clock_runs: set.runs ? "yes" : "no" });
}

// The clock as it stood when the page was left.
export function resume(setup) {
  const left = setup.clock === undefined ? NaN : seconds(setup.clock);
  if (isFinite(left)) clock = { left, video: Number(setup.clock_video_s || 0), runs: setup.clock_runs !== "no" };
}

export function turn(runs) {
  if (clock !== null) clockIs({ left: clockLeft(), video: hasVideo() ? video.currentTime : 0, runs });
}

export async function setClock() {
  const typed = at("s-clock").value.trim();
  if (!isFinite(seconds(typed))) {
    say("The clock was not set: found “" + typed + "”, expected a clock such as 13:07.");
    at("s-clock").setAttribute("aria-invalid", "true");
    return;
  }
  at("s-clock").removeAttribute("aria-invalid");
  steps.push({ row: false, clock });
  // The next key is a command already, before the program has answered.
  at("s-clock").value = "";
  at("game").open = teamName() === "";
  at("desk").focus({ preventScroll: true });
  say("Clock set: " + typed + (hasVideo() ? " at " + minutes(video.currentTime) + " of the video." : "."));
  const answered = clockIs({ left: seconds(typed), video: hasVideo() ? video.currentTime : 0, runs: true });
  if (logging && editing === null) field("clock").value = clockNow();
  clockSaid();
  await answered;
  await ask("setup", { period: at("s-period").value });
}

export function clockSaid() {
  at("undo").disabled = !state.canUndo && steps.length === 0;
  if (clock === null) return;
  at("clock-said").textContent = "Clock set: " + minutes(clock.left) + " at " + minutes(clock.video)
    + " of the video. It runs with the video, and stands from a whistle (A, S, G, H) to a face-off (M, I).";
}

export function tick() {
  const parts = [];
  if (hasVideo()) parts.push("video " + minutes(video.currentTime));
  if (clock !== null) parts.push("period " + at("s-period").value + ", clock " + clockNow() + (clock.runs ? "" : " (stands)"));
  at("now").textContent = parts.join(", ");
}
