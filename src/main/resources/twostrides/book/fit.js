// Nothing is scrolled sideways: a table that is wider than its place gets narrower cells; where that does not
// do, each row becomes a card with its headings in it. Folds are fitted when they open.
var FIT = (function () {
  'use strict';
  var widths = new WeakMap();

  function name(table) {
    var heads = table.tHead.rows[0].cells;
    Array.prototype.forEach.call(table.tBodies, function (body) {
      Array.prototype.forEach.call(body.rows, function (r) {
        Array.prototype.forEach.call(r.cells, function (c, i) {
          if (r.cells.length > 1) { c.setAttribute('data-head', heads[i].getAttribute('data-label') || KIT.words(heads[i])); }
          c.classList.toggle('none', /^[–\s]*$/.test(c.textContent));
        });
      });
    });
  }
  function fit(region) {
    var table = region.querySelector('table');
    function wide() { return region.scrollWidth > region.clientWidth + 1; }
    if (!table || region.clientWidth === 0) { return; }
    table.classList.remove('tight', 'cards');
    if (wide()) { table.classList.add('tight'); }
    if (wide()) {
      name(table);
      table.classList.replace('tight', 'cards');
    }
  }
  var seen = new ResizeObserver(function (all) {
    all.forEach(function (e) {
      // Fitting changes how high a place is, and that is no reason to fit again.
      if (widths.get(e.target) === e.contentRect.width) { return; }
      widths.set(e.target, e.contentRect.width);
      fit(e.target);
    });
  });
  return {
    watch: function (page) { Array.from(page.querySelectorAll('.scroll')).forEach(function (r) { seen.observe(r); }); },
    again: function (table) { fit(table.closest('.scroll')); }
  };
})();
