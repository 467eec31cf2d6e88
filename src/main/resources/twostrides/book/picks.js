// Which rows of a table are shown: a list for each column that sorts rows into a few kinds, and for
// names a search in their own column. Nothing is looked for across columns, where "icing" would find
// "no icing". Choices stand in the address as f0-cause=icing; names are only ever set as text.
var PICKS = (function () {
  'use strict';
  // Columns by what their heading leads to in numbers.html, in the order in which a coach asks, and
  // what a row may say without a column.
  var LISTS = ['team', 'opponent', 'venue', 'game', 'period', 'score', 'strength', 'way-out', 'pressure', 'from', 'side', 'cleared', 'kind', 'cause', 'what-came-of-it', 'ruling', 'face-off-won-by'];
  var UNSHOWN = new Map([['opponent', 'Opponent'], ['venue', 'Venue'], ['score', 'Score'], ['strength', 'Strength'], ['way-out', 'Way out'],
    ['pressure', 'Pressure'], ['from', 'From'], ['side', 'Side']]);
  var NAMES = ['player', 'unit'];
  var MANY = 20; // rows from which a table without lists and names is searched by its first column; assumed
  var UNKNOWN = 'not known';

  function text(cell) { return cell ? cell.textContent.replace(/\s+/g, ' ').trim() : ''; }
  function known(value) { return value === '' || value === '–' ? UNKNOWN : value; }
  // Letters and digits in a row are a word, whatever stands between them.
  function tokens(t) { return t.normalize('NFC').toLowerCase().match(/[\p{L}\p{M}\p{N}]+/gu) || []; }
  function values(rows, of) {
    var seen = new Set(rows.map(of));
    var order = Array.from(seen).filter(function (v) { return v !== UNKNOWN; }).sort(function (a, b) {
      return a.localeCompare(b, 'en', { numeric: true });
    });
    return seen.has(UNKNOWN) ? order.concat(UNKNOWN) : order;
  }
  function term(th) {
    var a = th.querySelector('a[href*="#"]');
    return a ? a.getAttribute('href').split(/html[#:]/)[1] : '';
  }

  // What rows can be picked by: { key, label, of }, of a row its value; names are searched.
  function columns(table, rows) {
    var all = [];
    Array.prototype.forEach.call(table.tHead.rows[0].cells, function (th, i) {
      var key = term(th);
      var label = text(th);
      function of(r) { return known(text(r.cells[i])); }
      function period(r) {
        var m = /^P(\d+) /.exec(text(r.cells[i]).replace(',', ' '));
        return m ? m[1] : '';
      }
      if (th.className === 'n') { return; }
      if (NAMES.indexOf(key) >= 0) { all.push({ key: key, label: label, of: of, names: true }); }
      else if (rows.every(period)) { all.push({ key: 'period', label: 'Period', of: period }); }
      else if (LISTS.indexOf(key) >= 0 && !rows.some(function (r) { return r.cells[i].className === 'why'; })) {
        all.push({ key: key, label: label, of: of });
      }
    });
    UNSHOWN.forEach(function (label, key) {
      var there = rows.some(function (r) { return r.hasAttribute('data-' + key); });
      if (there && !all.some(function (c) { return c.key === key; })) {
        all.push({ key: key, label: label, of: function (r) { return known(r.getAttribute('data-' + key) || ''); } });
      }
    });
    var telling = all.filter(function (c, i) {
      // A list of one word tells nothing, one of as many as there are rows no more than the table.
      var n = new Set(rows.map(c.of)).size;
      return all.findIndex(function (d) { return d.key === c.key; }) === i && (c.names || (n > 1 && n < rows.length));
    });
    if (telling.length === 0 && rows.length >= MANY) {
      telling.push({ key: 'row', label: text(table.tHead.rows[0].cells[0]), of: function (r) { return text(r.cells[0]); }, names: true });
    }
    // Names first: they are no list.
    return telling.sort(function (a, b) { return LISTS.indexOf(a.key) - LISTS.indexOf(b.key); });
  }

  // A name fits when it has every word that was written, as a whole: 10 is not 110.
  function search(column, rows, page, id) {
    function each(r) { return column.key === 'unit' ? column.of(r).split(/;\s*/) : [column.of(r)]; }
    var box = page.make('label', column.label + ' ');
    var input = page.make('input', '', { type: 'search', size: '18', list: id, title: 'Whole words, or a number' });
    var offered = page.make('datalist', '', { id: id });
    new Set([].concat.apply([], rows.map(each))).forEach(function (n) {
      if (n !== UNKNOWN) { offered.appendChild(page.make('option', '', { value: n })); }
    });
    box.appendChild(input);
    box.appendChild(offered);
    return { box: box, input: input, event: 'input', fits: function (r) {
      var wanted = tokens(input.value);
      return each(r).some(function (n) {
        var has = new Set(tokens(n));
        return n === input.value || (wanted.length > 0 && wanted.every(function (w) { return has.has(w); }));
      });
    } };
  }

  function list(column, rows, page) {
    var box = page.make('label', column.label + ' ');
    var input = page.make('select', '', {});
    var options = new Map();
    function option(label, fits) {
      options.set(label, fits);
      input.appendChild(page.make('option', label, { value: label }));
    }
    input.appendChild(page.make('option', 'all', { value: '' }));
    var kinds = new Set();
    values(rows, column.of).forEach(function (v, i, all) {
      // Icing, written or inferred, is one cause.
      var kind = v.split(', ')[0];
      var several = all.filter(function (w) { return w.split(', ')[0] === kind; }).length > 1;
      if (column.key === 'cause' && several && !kinds.has(kind)) {
        kinds.add(kind);
        option(kind + ', any', function (w) { return w.split(', ')[0] === kind; });
      }
      option(v, function (w) { return w === v; });
    });
    box.appendChild(input);
    return { box: box, input: input, event: 'change', fits: function (r) { return options.get(input.value)(column.of(r)); } };
  }

  // The controls of one table. page: make, state and keep of book.js; changed is called after a choice.
  function of(table, rows, number, page, changed) {
    var controls = columns(table, rows).map(function (c) {
      var key = 'f' + number + '-' + c.key;
      var control = c.names ? search(c, rows, page, page.prefix + key) : list(c, rows, page);
      control.key = key;
      control.input.addEventListener(control.event, function () {
        page.keep(key, control.input.value);
        changed();
      });
      return control;
    });
    function chosen() { return controls.filter(function (c) { return c.input.value.trim() !== ''; }); }
    return {
      controls: controls,
      any: function () { return chosen().length > 0; },
      fits: function (row) { return chosen().every(function (c) { return c.fits(row); }); },
      show: function () {
        controls.forEach(function (c) {
          var wanted = page.state().get(c.key) || '';
          c.input.value = wanted;
          // Where all icings are of one kind, any icing is that kind.
          if (c.input.selectedIndex === -1 && / any$/.test(wanted)) {
            c.input.value = Array.from(c.input.options).map(function (o) { return o.value; })
              .filter(function (v) { return v.split(', ')[0] === wanted.split(', ')[0]; })[0] || '';
          }
          // A list that does not have what the address asks for shows all.
          if (c.input.selectedIndex === -1) { c.input.value = ''; }
        });
      },
      clear: function () {
        controls.forEach(function (c) { c.input.value = ''; page.keep(c.key, ''); });
        changed();
      }
    };
  }
  return { of: of, tokens: tokens };
})();
