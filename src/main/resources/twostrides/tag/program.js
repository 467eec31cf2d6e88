// Asks the program that served the page, and nobody else.
import { show } from "./list.js";
import { problems } from "./page.js";

const STALE = 409; // the program's answer to a page that does not show an exit as it is

// Which page this is: undo takes back the steps of this one only. A page that is loaded again stays
// the same, one that is opened in another tab does not.
const PAGE = (() => {
  const way = performance.getEntriesByType("navigation")[0];
  const kept = way && way.type === "reload" ? sessionStorage.getItem("page") : null;
  const page = kept || Array.from(crypto.getRandomValues(new Uint8Array(8)), (b) => b.toString(16)).join("-");
  sessionStorage.setItem("page", page);
  return page;
})();

export async function ask(path, fields, refused = problems) {
  let answer;
  try {
    answer = await fetch(path, {
      method: "POST",
      headers: { "Content-Type": "application/json" },
      body: JSON.stringify({ ...fields, page: PAGE }),
    });
  } catch (e) {
    refused([{
      field: "", found: "no answer from the program", expected: "two-strides tag running",
      toDo: "Start it again with the same sheet: everything that was saved is kept. This was not saved.",
    }]);
    return null;
  }
  let said = null;
  try {
    said = await answer.json();
  } catch (e) {
    said = { problems: [{ field: "", found: "an answer that cannot be read", expected: "an answer of this program", toDo: "Load the page again." }] };
  }
  if (said.problems) {
    // Another page was faster: the list shows the exits as they are now, the form what was typed.
    if (answer.status === STALE) {
      const now = await ask("state");
      if (now !== null) show(now);
    }
    refused(said.problems, answer.status === STALE);
    return null;
  }
  return said;
}
