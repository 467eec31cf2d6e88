// Compares two sides that a reader picks: adds the counts of their games, and works out shares,
// differences and verdicts as the program does. Names are only ever set as text; the choice stands
// in the address, so that a view can be sent. book.js is there before it.
(function () {
  'use strict';
  var source = BOOK.at('compared');
  if (!source) { return; }
  var data = JSON.parse(source.textContent);
  var make = BOOK.make;
  var Z = 1.959963984540054; // 97.5 % point of the normal distribution
  var STRENGTHS = data.apart.length + 1; // those shown apart, and all others
  var ALL = Array.from({ length: STRENGTHS }, function (_, s) { return s; });
  var NONE = '–';
  var FIRST = 'A more often';
  var SECOND = 'B more often';
  var CHANCE = 'no clear difference';
  var NOTHING = 'No cases on either side.';

  // ---- numbers: the formulas of docs/numbers.md ----
  function few(c) { return c.n < data.fewest; }
  function share(c) {
    // A half up, on whole numbers: 23 of 40 is 58, though 0.575 times 100 falls below 57.5 in binary.
    if (c.n === 0 || few(c)) { return c.n === 0 ? 'none' : data.few; }
    var whole = Math.floor((200 * c.k + c.n) / (2 * c.n));
    return whole === 0 && c.k > 0 ? 'under 1 %' : whole === 100 && c.k < c.n ? 'over 99 %' : whole + ' %';
  }
  // Cases of one game may hang together: how many times the variance of independent cases, 1 or more.
  function design(c) {
    var telling = c.games.filter(function (g) { return g.n > 0; }).length;
    if (telling < 2 || c.k === 0 || c.k === c.n) { return 1; }
    var p = c.k / c.n;
    var squares = c.games.reduce(function (sum, g) {
      var off = g.k - g.n * p;
      return sum + off * off;
    }, 0);
    return Math.max(1, telling / (telling - 1) * squares / (c.n * p * (1 - p)));
  }
  function wilson(c) {
    var p = c.k / c.n;
    var n = c.n / design(c);
    var z2 = Z * Z;
    var middle = 2 * n * p + z2;
    var half = Z * Math.sqrt(z2 + 4 * n * p * (1 - p));
    var below = 2 * (n + z2);
    return {
      low: c.k === 0 ? 0 : Math.max(0, (middle - half) / below),
      high: c.k === c.n ? 1 : Math.min(1, (middle + half) / below)
    };
  }
  // Newcombe 1998, method 10.
  function difference(a, b) {
    var pa = a.k / a.n;
    var pb = b.k / b.n;
    var wa = wilson(a);
    var wb = wilson(b);
    var d = pa - pb;
    return {
      value: d,
      low: Math.max(-1, d - Math.hypot(pa - wa.low, wb.high - pb)),
      high: Math.min(1, d + Math.hypot(wa.high - pa, pb - wb.low))
    };
  }
  function even(low, rest) { return rest > 0.5 || (rest === 0.5 && low % 2 !== 0) ? low + 1 : low; }
  function points(x) {
    var low = Math.floor(100 * x);
    var whole = even(low, 100 * x - low);
    return (whole > 0 ? '+' : '') + (whole || 0);
  }
  function differenceWords(a, b) {
    if (few(a) || few(b)) { return a.n === 0 || b.n === 0 ? NONE : data.few; }
    var d = difference(a, b);
    return points(d.value) + ' (' + points(d.low) + ' to ' + points(d.high) + ')';
  }
  function verdict(a, b) {
    if (few(a) || few(b)) { return data.few; }
    var d = difference(a, b);
    return d.low > 0 ? FIRST : d.high < 0 ? SECOND : CHANCE;
  }
  function mean(c) {
    if (c.n === 0 || few(c)) { return c.n === 0 ? NONE : data.few; }
    var low = Math.floor(100 * c.k / c.n);
    var hundredths = even(low, (100 * c.k - low * c.n) / c.n);
    var cents = hundredths % 100;
    return Math.floor(hundredths / 100) + '.' + (cents < 10 ? '0' : '') + cents;
  }

  // ---- counts: [label, team, game, game, ...], a game being cell, hits, cases, cell, ... ----
  function counts(pick) {
    return pick.side.slice(pick.from + 1, pick.to + 2).map(function (game) {
      var cells = {};
      for (var i = 0; i < game.length; i += 3) { cells[game[i]] = { k: game[i + 1], n: game[i + 2] }; }
      return cells;
    });
  }
  function add(total, c) { return { k: total.k + c.k, n: total.n + c.n }; }
  function sum(games, slots, strengths, byGame) {
    var each = games.map(function (cells) {
      return slots.reduce(function (total, slot) {
        return strengths.reduce(function (t, s) {
          return add(t, cells[slot * STRENGTHS + s] || { k: 0, n: 0 });
        }, total);
      }, { k: 0, n: 0 });
    });
    var total = each.reduce(add, { k: 0, n: 0 });
    // Those of players and units are taken as independent.
    total.games = byGame ? each : [];
    return total;
  }
  // The rows in which either side has cases; strengths stand apart where each of them occurs.
  function rows(list, a, b, byGame) {
    var out = [];
    list.forEach(function (row) {
      var slots = row.slice(1);
      function at(label, strengths) {
        return { label: label, a: sum(a, slots, strengths, byGame), b: sum(b, slots, strengths, byGame) };
      }
      function occurs(r) { return r.a.n + r.b.n > 0; }
      var all = at(row[0], ALL);
      var apart = data.apart.map(function (word, s) { return at(row[0] + ', ' + word, [s]); });
      if (occurs(all)) { out.push(all); }
      if (apart.every(occurs)) { out = out.concat(apart); }
    });
    return out;
  }

  // ---- the picture: a line a row, a dot and what it could be for either side ----
  var SVG = 'http://www.w3.org/2000/svg';
  function shape(tag, attributes, text) {
    var e = document.createElementNS(SVG, tag);
    Object.keys(attributes).forEach(function (k) { e.setAttribute(k, String(attributes[k])); });
    if (text !== undefined) { e.textContent = text; }
    return e;
  }
  // Rows that differ come first; those with too few on a side say nothing.
  function picture(list) {
    var box = BOOK.at('pairs');
    box.textContent = '';
    var told = list.filter(function (r) { return !few(r.a) && !few(r.b); });
    told.sort(function (x, y) { return (verdict(x.a, x.b) === CHANCE) - (verdict(y.a, y.b) === CHANCE); });
    if (told.length === 0) { return; }
    var wide = box.clientWidth >= 690;
    var width = wide ? 780 : 360;
    var left = wide ? 330 : 12;
    var right = width - (wide ? 112 : 96); // what is left is for the counts
    var step = wide ? 46 : 66;
    var most = Math.max.apply(null, told.map(function (r) { return Math.max(wilson(r.a).high, wilson(r.b).high); }));
    var end = Math.min(1, Math.ceil(most * 10) / 10);
    function x(share) { return left + (right - left) * share / end; }
    var svg = shape('svg', { 'class': 'chart', viewBox: '0 0 ' + width + ' ' + (told.length * step + 46), width: '100%', role: 'img',
      'aria-label': 'Shares of A and B with what they could be; the table below has the numbers' });
    for (var i = 0; i <= 4; i++) {
      svg.appendChild(shape('line', { 'class': 'grid', x1: x(end * i / 4), x2: x(end * i / 4), y1: 22, y2: told.length * step + 22 }));
      svg.appendChild(shape('text', { 'class': 't-note', x: x(end * i / 4), y: told.length * step + 40, 'text-anchor': i === 0 ? 'start' : i === 4 ? 'end' : 'middle' },
        Math.round(100 * end * i / 4) + ' %'));
    }
    svg.appendChild(shape('text', { 'class': 't-note', x: left, y: 14 }, 'filled: A, hollow: B'));
    told.forEach(function (r, n) {
      var y = 22 + n * step + (wide ? 20 : 40);
      var differs = verdict(r.a, r.b) !== CHANCE;
      svg.appendChild(shape('text', { 'class': differs ? 't-strong' : 't-words', x: wide ? 0 : 12, y: wide ? y + 4 : y - 20 }, r.label));
      [[r.a, -8, 'ink'], [r.b, 8, 'hollow']].forEach(function (side) {
        var w = wilson(side[0]);
        svg.appendChild(shape('line', { 'class': 'whisker ' + (differs ? 'trouble' : 'plain'), x1: x(w.low), x2: x(w.high), y1: y + side[1], y2: y + side[1] }));
        svg.appendChild(shape('circle', { 'class': side[2], cx: x(side[0].k / side[0].n), cy: y + side[1], r: 4.5 }));
        svg.appendChild(shape('text', { 'class': 't-note', x: width, y: y + side[1] + 4, 'text-anchor': 'end' }, of(side[0])));
      });
    });
    box.appendChild(svg);
  }

  // ---- the page ----
  function say(key, text) {
    Array.prototype.forEach.call(document.querySelectorAll('[data-say="' + key + '"]'), function (e) {
      // Only what changes is read aloud.
      if (e.textContent !== text) { e.textContent = text; }
    });
  }
  function fill(id, lines) {
    var table = document.querySelector('table[data-own="' + id + '"]');
    var heads = table.tHead.rows[0].cells;
    var body = table.tBodies[0];
    body.textContent = '';
    if (lines.length === 0) {
      var none = make('tr', '', { 'class': 'zero' });
      none.appendChild(make('td', NOTHING, { colspan: String(heads.length) }));
      body.appendChild(none);
    }
    lines.forEach(function (cells) {
      var tr = make('tr');
      cells.forEach(function (text, i) {
        var cell = make(i === 0 ? 'th' : 'td', text, i === 0 ? { scope: 'row' } : {});
        if (i > 0 && heads[i].className !== 'n') { cell.className = 't'; } // words, as in the page as it came
        tr.appendChild(cell);
      });
      body.appendChild(tr);
    });
    FIT.again(table);
  }
  function whole(n) { return String(n).replace(/\B(?=(\d{3})+$)/g, ','); }
  function of(c) { return whole(c.k) + ' of ' + whole(c.n); }
  function words(pick) {
    var last = pick.side.length - 2;
    if (pick.from === 1 && pick.to === last) { return pick.side[0]; }
    return pick.side[0] + (pick.from === pick.to ? ', game ' + pick.from
      : ', games ' + pick.from + ' to ' + pick.to);
  }
  function show(view) {
    var a = counts(view.a);
    var b = counts(view.b);
    var byGame = view.of === 'teams' || view.of === 'stretches';
    var told = 0;
    var differing = 0;
    ['summary', 'ways'].forEach(function (id) {
      fill(id, rows(data[id], a, b, byGame).map(function (r) {
        var v = verdict(r.a, r.b);
        told += v !== data.few ? 1 : 0;
        differing += v === FIRST || v === SECOND ? 1 : 0;
        return [r.label, of(r.a), share(r.a), of(r.b), share(r.b), differenceWords(r.a, r.b), v];
      }));
    });
    picture(rows(data.summary, a, b, byGame));
    fill('against', rows(data.against, a, b, byGame).map(function (r) {
      return [r.label, whole(r.a.k) + ' in ' + whole(r.a.n), mean(r.a), whole(r.b.k) + ' in ' + whole(r.b.n), mean(r.b)];
    }));
    // The first row is what the sentence is about, also where neither side has a case.
    var ra = sum(a, data.summary[0].slice(1), ALL, byGame);
    var rb = sum(b, data.summary[0].slice(1), ALL, byGame);
    say('a', words(view.a));
    say('b', words(view.b));
    say('a-counts', of(ra));
    say('b-counts', of(rb));
    say('a-share', share(ra));
    say('b-share', share(rb));
    say('verdict', verdict(ra, rb));
    say('told', String(told));
    say('differing', String(differing));
    BOOK.at('shared').hidden = view.a.side !== view.b.side
      || Math.max(view.a.from, view.b.from) > Math.min(view.a.to, view.b.to);
    var missing = BOOK.at('missing');
    missing.hidden = view.missing.length === 0;
    missing.textContent = view.missing.length === 0 ? ''
      : 'Not to be compared in this book: ' + view.missing.join('; ') + '. Shown instead is what the page opens with.';
  }

  // ---- the address: #of=players&a=...&b=...&ga=1-6&gb=7-12 ----
  function games(text, side, whole) {
    var last = side.length - 2;
    var m = /^(\d+)-(\d+)$/.exec(text || '');
    return m && +m[1] >= 1 && +m[1] <= +m[2] && +m[2] <= last ? [+m[1], +m[2]] : whole;
  }
  var kinds = Object.keys(data.sides).filter(function (k) { return data.sides[k].length > 0; });
  function read() {
    var s = BOOK.state();
    var kind = kinds.indexOf(s.get('of')) >= 0 ? s.get('of') : data.of;
    var list = data.sides[kind];
    var missing = [];
    function side(key, otherwise) {
      var label = s.get(key);
      var found = list.filter(function (e) { return e[0] === label; })[0];
      if (label && !found) { missing.push(label); }
      return found || list[Math.min(otherwise, list.length - 1)];
    }
    var a = side('a', 0);
    var b = kind === 'stretches' ? a : side('b', list[0] === a ? 1 : 0);
    var last = [a.length - 2, b.length - 2];
    var half = Math.floor(last[0] / 2);
    var ga = games(s.get('ga'), a, [1, kind === 'stretches' ? half : last[0]]);
    var gb = games(s.get('gb'), b, [kind === 'stretches' ? half + 1 : 1, last[1]]);
    return {
      of: kind, missing: missing,
      a: { side: a, from: ga[0], to: ga[1] }, b: { side: b, from: gb[0], to: gb[1] }
    };
  }
  function write(view) {
    function range(pick) {
      var whole = pick.from === 1 && pick.to === pick.side.length - 2;
      return whole && view.of !== 'stretches' ? '' : pick.from + '-' + pick.to;
    }
    BOOK.keep('of', view.of);
    BOOK.keep('a', view.a.side[0]);
    BOOK.keep('b', view.of === 'stretches' ? '' : view.b.side[0]);
    BOOK.keep('ga', range(view.a));
    BOOK.keep('gb', range(view.b));
  }

  // ---- picking ----
  function select(label, parent, change) {
    var box = make('label', label + ' ');
    var list = make('select');
    list.addEventListener('change', function () { change(list.value); });
    box.appendChild(list);
    parent.appendChild(box);
    var there = '';
    return { box: box, show: function (texts, chosen) {
      // A list that is being walked through by keys is not taken away under them.
      if (there !== JSON.stringify(texts)) {
        there = JSON.stringify(texts);
        list.textContent = '';
        texts.forEach(function (t) { list.appendChild(make('option', t[1], { value: String(t[0]) })); });
      }
      list.value = String(chosen);
    } };
  }
  function labels(kind) { return data.sides[kind].map(function (e, i) { return [i, e[0]]; }); }
  var view;
  function apply(change) {
    return function (value) {
      change(value);
      view.missing = [];
      write(view);
      refresh();
    };
  }
  function place(key, side) {
    var pick = view[key];
    var last = side.length - 2;
    // Another team has other games; a team-mate is seen in the same ones.
    if (pick.side[1] !== side[1]) { pick.from = 1; pick.to = last; }
    pick.side = side;
  }
  var box = BOOK.at('pick');
  var first = make('div', '', { 'class': 'tools' });
  box.appendChild(first);
  var kindList = select('Compare', first, function (value) {
    ['a', 'b', 'ga', 'gb'].forEach(function (k) { BOOK.keep(k, ''); });
    BOOK.keep('of', value);
    view = read();
    write(view);
    refresh();
  });
  var both = select('of', first, apply(function (value) {
    var side = data.sides[view.of][+value];
    place('a', side);
    place('b', side);
  }));
  function sideBox(key, name) {
    var set = make('fieldset', '', { 'class': 'tools' });
    set.appendChild(make('legend', name));
    var who = select('Who', set, apply(function (value) { place(key, data.sides[view.of][+value]); }));
    var from = select('from', set, apply(function (value) {
      view[key].from = +value;
      view[key].to = Math.max(+value, view[key].to);
    }));
    var to = select('to', set, apply(function (value) {
      view[key].to = +value;
      view[key].from = Math.min(+value, view[key].from);
    }));
    box.appendChild(set);
    return function () {
      var pick = view[key];
      var list = data.teams[pick.side[1]].map(function (id, i) { return [i + 1, (i + 1) + ': ' + id]; });
      who.box.hidden = view.of === 'stretches';
      who.show(labels(view.of), data.sides[view.of].indexOf(pick.side));
      from.show(list, pick.from);
      to.show(list, pick.to);
    };
  }
  var boxes = [sideBox('a', 'A'), sideBox('b', 'B')];
  function refresh() {
    kindList.show(kinds.map(function (k) { return [k, k]; }), view.of);
    both.box.hidden = view.of !== 'stretches';
    both.show(labels(view.of), data.sides[view.of].indexOf(view.a.side));
    boxes.forEach(function (b) { b(); });
    show(view);
  }
  view = read();
  refresh();
  window.addEventListener('hashchange', function () {
    view = read();
    refresh();
  });
  // A tablet that is turned gets the other form.
  window.addEventListener('resize', function () { show(view); });
})();
