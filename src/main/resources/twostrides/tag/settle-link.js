// In a book that two-strides settle serves: each icing to look at leads to the page that settles it.
"use strict";
(() => {
  function link(n) {
    const a = document.createElement("a");
    a.href = "../#" + n;
    a.className = "settle";
    a.textContent = "Settle it on the video";
    return a;
  }
  for (const card of document.querySelectorAll("details.flag.look")) {
    card.querySelector("summary").appendChild(link(Number(card.id.slice("look-".length))));
  }
  const table = document.querySelector("[aria-label='All to look at, in order'] tbody");
  if (table) [...table.rows].forEach((tr, i) => tr.cells[0].append(" ", link(i + 1)));
})();
