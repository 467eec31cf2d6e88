// The meeting page: the list, ready-made lists, and the stage that plays them. CLIPS holds what can be
// watched (MeetingData): numbers are places in CLIPS.words. Text from sheets is only ever set as text.
(function () {
  'use strict';
  var make = KIT.make;
  var STEP = 60; // rows shown at once
  var FRAME = 1 / 25; // seconds of a step; assumed

  function at(id) { return document.getElementById(id); }
  function word(n) { return CLIPS.words[n]; }
  var rows = CLIPS.rows.map(function (r) {
    return { game: word(r[0]), at: r[1], clock: word(r[2]), team: word(r[3]), opponent: word(r[4]), player: word(r[5]),
      strength: word(r[6]), score: word(r[7]), kinds: r[8], sentence: word(r[9]), source: word(r[10]) + ', line ' + r[11],
      place: r.length > 13 ? [r[12], r[13]] : null, skaters: r.slice(14) };
  });
  rows.forEach(function (r) {
    r.period = /^P(\d+)/.exec(r.clock)[1];
    r.title = [r.clock, r.game, r.player || r.team].join(', ');
    r.note = '';
  });
  var bySource = new Map(rows.map(function (r) { return [r.game + '\n' + r.source, r]; }));
  // What the book knows of a clip that was put on the list from a row or a mark.
  function known(clip) {
    var own = clip.source && bySource.get(clip.game + '\n' + clip.source);
    if (own) { return own; }
    var near = rows.filter(function (r) { return r.game === clip.game && Math.abs(r.at - clip.at) < 1; });
    return near.sort(function (a, b) { return Math.abs(a.at - clip.at) - Math.abs(b.at - clip.at); })[0];
  }
  function full(clip) {
    var row = known(clip);
    return row ? Object.assign({}, row, { note: clip.note || '' })
      : { game: clip.game, at: clip.at, title: clip.title, sentence: '', note: clip.note || '', source: clip.source, place: null, skaters: [] };
  }

  // ---- a line of a list ----
  function item(clip, buttons) {
    var li = make('li', '', {});
    var row = full(clip);
    var play = make('button', row.title || row.game, { type: 'button', 'class': 'at' });
    li.appendChild(play);
    li.appendChild(make('span', ' ' + BOOK.inUnits(row.sentence || ''), {}));
    var doubt = VIDEO.span(row).doubt;
    if (doubt) { li.appendChild(make('span', ' ' + doubt + '.', { 'class': 'doubt' })); }
    buttons.forEach(function (b) { li.appendChild(b); });
    return { li: li, play: play };
  }
  function tool(label, run, attributes) {
    var b = make('button', label, Object.assign({ type: 'button' }, attributes || {}));
    b.addEventListener('click', run);
    return b;
  }

  // ---- the list ----
  var dragged = -1;
  function move(from, to) {
    var all = LIST.all();
    if (to < 0 || to >= all.length || from === to) { return; }
    all.splice(to, 0, all.splice(from, 1)[0]);
    LIST.keep(all);
  }
  function focusOn(i) {
    var li = at('list').children[i];
    if (li) { li.querySelector('button.at').focus(); }
  }
  function list() {
    // A note that is being typed stays where it is.
    if (document.activeElement && document.activeElement.className === 'note' && at('list').contains(document.activeElement)) { return; }
    var all = LIST.all();
    at('list').textContent = '';
    all.forEach(function (clip, i) {
      var note = make('input', '', { type: 'text', 'class': 'note', placeholder: 'Note', 'aria-label': 'Note on clip ' + (i + 1) });
      note.value = clip.note;
      note.addEventListener('change', function () {
        var now = LIST.all();
        now[i] = Object.assign({}, now[i], { note: note.value });
        LIST.keep(now);
      });
      var made = item(clip, [note,
        tool('Up', function () { move(i, i - 1); focusOn(Math.max(0, i - 1)); }, { 'aria-label': 'Clip ' + (i + 1) + ' up' }),
        tool('Down', function () { move(i, i + 1); focusOn(Math.min(all.length - 1, i + 1)); }, { 'aria-label': 'Clip ' + (i + 1) + ' down' }),
        tool('Take off', function () { LIST.toggle(clip); focusOn(Math.min(i, all.length - 2)); }, { 'aria-label': 'Take clip ' + (i + 1) + ' off' })]);
      var li = made.li;
      made.play.addEventListener('click', function () { stage.open(LIST.all(), i); });
      made.play.title = 'Alt and an arrow moves it';
      li.draggable = true;
      li.addEventListener('keydown', function (e) {
        if (e.altKey && (e.key === 'ArrowUp' || e.key === 'ArrowDown')) {
          e.preventDefault();
          var to = i + (e.key === 'ArrowUp' ? -1 : 1);
          move(i, to);
          focusOn(Math.max(0, Math.min(all.length - 1, to)));
        }
      });
      li.addEventListener('dragstart', function (e) { dragged = i; e.dataTransfer.setData('text/plain', String(i)); });
      li.addEventListener('dragover', function (e) { e.preventDefault(); });
      li.addEventListener('drop', function (e) { e.preventDefault(); move(dragged, i); });
      at('list').appendChild(li);
    });
    said(all.length === 0 ? 'Nothing on the list yet: pick from the lists below, or press + beside a clip on any page.' : '');
    Array.prototype.forEach.call(document.querySelectorAll('#list-tools [data-some]'), function (b) { b.disabled = all.length === 0; });
    files();
  }
  function said(t) { at('list-said').textContent = t; }
  // Which files the list still needs.
  function files() {
    var games = Array.from(new Set(LIST.all().map(function (c) { return c.game; })));
    var missing = VIDEO.missing(games);
    if (games.length > 0) {
      said(LIST.all().length + (LIST.all().length === 1 ? ' clip from ' : ' clips from ') + games.length + (games.length === 1 ? ' game. ' : ' games. ')
        + (missing.length === 0 ? 'Every video is there.' : VIDEO.files().length === 0 && typeof SERVED === 'undefined'
          ? 'Choose the folder with the videos.' : 'No file is known for ' + missing.join('; ') + '.'));
    }
  }
  function listTools() {
    var bar = at('list-tools');
    var some = { 'data-some': '' };
    bar.appendChild(tool('Play meeting', function () { stage.open(LIST.all(), 0); }, Object.assign({ id: 'play' }, some)));
    if (typeof SERVED === 'undefined') {
      bar.appendChild(VIDEO.chooser('Folder with the videos', true, files).box);
      bar.appendChild(VIDEO.chooser('or files', false, files).box);
    }
    VIDEO.settings().forEach(function (s) { bar.appendChild(s); });
    bar.appendChild(tool('Export', function () { KIT.save('meeting.json', 'application/json', LIST.text()); }, some));
    var box = make('label', 'Import ');
    var input = make('input', '', { type: 'file', accept: '.json,application/json' });
    input.addEventListener('change', function () {
      input.files[0].text().then(function (t) {
        var read = LIST.read(t);
        if (read) { LIST.add(read); } else { said(input.files[0].name + ' is no meeting list: expected a file that Export saved.'); }
        input.value = '';
      });
    });
    box.appendChild(input);
    bar.appendChild(box);
    ['csv', 'm3u'].forEach(function (form) {
      bar.appendChild(tool(form.toUpperCase(), function () { 
        CLIPLISTS.save(LIST.all().map(full).map(function (c) {
          return Object.assign({}, c, { title: [c.title, c.sentence, c.note].filter(function (t) { return t; }).join('. ') });
        }), form);
       }, some));
    });
    var cleared = [];
    var clear = tool('Clear', function () {
      if (LIST.all().length > 0) { cleared = LIST.all(); LIST.keep([]); clear.textContent = 'Undo clear'; }
      else { LIST.keep(cleared); clear.textContent = 'Clear'; }
    }, {});
    bar.appendChild(clear);
    LIST.watch(function () { if (LIST.all().length > 0) { clear.textContent = 'Clear'; } });
  }

  // ---- ready-made lists ----
  var picks = {};
  var shown = STEP;
  var found = [];
  function select(label, key, options) {
    var box = make('label', label + ' ');
    var input = make('select', '', {});
    options.forEach(function (o) { input.appendChild(make('option', o[1], { value: o[0] })); });
    input.addEventListener('change', function () { shown = STEP; ready(); });
    box.appendChild(input);
    at('ready-tools').appendChild(box);
    picks[key] = input;
  }
  function values(key) {
    return Array.from(new Set(rows.map(function (r) { return r[key]; }))).filter(function (v) { return v; })
      .sort(function (a, b) { return a.localeCompare(b, 'en', { numeric: true }); })
      .map(function (v) { return [v, v]; });
  }
  function readyTools() {
    var lists = CLIPS.kinds.map(function (k, i) {
      return [String(i), k + ' (' + rows.filter(function (r) { return r.kinds & 1 << i; }).length + ')'];
    }).filter(function (l) { return !/ \(0\)$/.test(l[1]); });
    CLIPS.players.forEach(function (p, i) {
      if (p[2].length + p[3].length > 0) { lists.push(['p' + i, word(p[0]) + ', ' + word(p[1]) + ': worked ' + p[2].length + ', to talk about ' + p[3].length]); }
    });
    select('List', 'list', lists);
    var all = [['', 'all']];
    select('Team', 'team', all.concat(values('team')));
    select('Opponent', 'opponent', all.concat(values('opponent')));
    select('Player', 'player', all.concat(values('player')));
    select('Game', 'game', all.concat(values('game')));
    select('Period', 'period', all.concat(values('period')));
    select('Strength', 'strength', all.concat(values('strength')));
    select('Score', 'score', all.concat(values('score')));
    if (CLIPS.ours && rows.some(function (r) { return r.team === CLIPS.ours; })) { picks.team.value = CLIPS.ours; }
    at('ready-tools').appendChild(tool('Put all on the list', function () { LIST.add(found); }, { id: 'put-all' }));
    at('ready-tools').appendChild(tool('Play these', function () { stage.open(found, 0); }, { id: 'play-these' }));
    at('more').addEventListener('click', function () { shown += STEP; ready(); });
  }
  function ready() {
    var which = picks.list.value;
    var player = /^p(\d+)$/.exec(which);
    var of = player ? CLIPS.players[+player[1]][2].concat(CLIPS.players[+player[1]][3]).map(function (i) { return rows[i]; })
      : rows.filter(function (r) { return r.kinds & 1 << +which; });
    var keys = ['opponent', 'player', 'game', 'period', 'strength', 'score'].concat(player ? [] : ['team']);
    found = of.filter(function (r) { return keys.every(function (k) { return picks[k].value === '' || r[k] === picks[k].value; }); });
    at('ready').textContent = '';
    found.slice(0, shown).forEach(function (r, i) {
      var made = item(r, [LIST.button(r)]);
      made.play.addEventListener('click', function () { stage.open(found, i); });
      at('ready').appendChild(made.li);
    });
    at('more').hidden = found.length <= shown;
    at('ready-said').textContent = found.length + (found.length === 1 ? ' clip' : ' clips')
      + (found.length > shown ? ', the first ' + shown + ' shown. Play these and Put all take all ' + found.length + '.' : '.');
    ['put-all', 'play-these'].forEach(function (b) { at(b).disabled = found.length === 0; });
  }

  // ---- the rink: where the puck was let go, and the skaters that are known ----
  function draw(svg, row) {
    var old = svg.querySelector('g.on-it');
    if (old) { old.remove(); }
    svg.parentNode.hidden = !row.place;
    if (!row.place) { return; }
    var NS = 'http://www.w3.org/2000/svg';
    var scale = (svg.viewBox.baseVal.width - 2) / CLIPS.rink[0];
    function x(m) { return 1 + (m + CLIPS.rink[0] / 2) * scale; }
    function y(m) { return 1 + (CLIPS.rink[1] / 2 - m) * scale; }
    var g = document.createElementNS(NS, 'g');
    g.setAttribute('class', 'on-it');
    function add(tag, attributes) {
      var e = document.createElementNS(NS, tag);
      Object.keys(attributes).forEach(function (k) { e.setAttribute(k, attributes[k]); });
      g.appendChild(e);
    }
    row.skaters.forEach(function (s) {
      if (Math.hypot(s[3], s[4]) >= 0.5) { add('line', { 'class': 'ahead', x1: x(s[1]), y1: y(s[2]), x2: x(s[1] + s[3] / 2), y2: y(s[2] + s[4] / 2) }); }
      if (s[0]) { add('circle', { 'class': 'hollow', cx: x(s[1]), cy: y(s[2]), r: 5 }); }
      else { add('path', { 'class': 'opponent', d: 'M' + x(s[1]) + ' ' + y(s[2]) + 'm-4.5 -4.5l9 9m0 -9l-9 9' }); }
    });
    add('circle', { 'class': 'ink', cx: x(row.place[0]), cy: y(row.place[1]), r: 6 });
    svg.appendChild(g);
  }

  // ---- the stage ----
  var stage = (function () {
    var box = at('stage');
    var video = box.querySelector('video');
    var player = VIDEO.player({ video: video, note: box.querySelector('.status'), asked: box.querySelector('.asked'), chosen: null });
    var clips = [];
    var now = 0;
    var back;
    function part(css) { return box.querySelector(css); }
    function show(i) {
      if (i < 0 || i >= clips.length) { player.say(i < 0 ? 'This is the first clip.' : 'This was the last clip.'); return; }
      now = i;
      var row = full(clips[i]);
      part('.place').textContent = (i + 1) + ' of ' + clips.length;
      part('h2').textContent = row.title || row.game;
      part('.sentence').textContent = BOOK.inUnits(row.sentence);
      part('.note').textContent = clips[i].note || '';
      part('.doubt').textContent = VIDEO.span(row).doubt ? 'The ' + VIDEO.span(row).doubt + '; the clip starts that much earlier.' : '';
      draw(part('svg'), row);
      player.play(row);
    }
    function replay() { show(now); }
    function pause() {
      if (!video.paused) { video.pause(); } else if (player.over) { replay(); } else { video.play(); }
    }
    function slow() {
      video.playbackRate = video.playbackRate < 1 ? 1 : 0.5;
      video.defaultPlaybackRate = video.playbackRate;
      slower.setAttribute('aria-pressed', String(video.playbackRate < 1));
    }
    function step(by) {
      video.pause();
      video.currentTime = Math.max(0, video.currentTime + by * FRAME);
    }
    function screen() {
      if (document.fullscreenElement) { document.exitFullscreen(); } else { box.requestFullscreen().catch(function () { player.say('This browser shows no full screen.'); }); }
    }
    function large() {
      box.classList.toggle('large');
      KIT.remember('large', box.classList.contains('large') ? 'yes' : '');
      larger.setAttribute('aria-pressed', String(box.classList.contains('large')));
    }
    function close() {
      player.stop();
      box.hidden = true;
      document.body.classList.remove('staged');
      if (document.fullscreenElement) { document.exitFullscreen(); }
      if (back) { back.focus(); }
    }
    var bar = part('.bar');
    bar.appendChild(tool('Back', function () { show(now - 1); }, { title: 'Arrow left, page up' }));
    bar.appendChild(tool('Next', function () { show(now + 1); }, { title: 'Arrow right, page down' }));
    bar.appendChild(tool('Play or pause', pause, { title: 'Space' }));
    bar.appendChild(tool('Replay', replay, { title: 'R' }));
    var slower = tool('Half speed', slow, { title: 'H', 'aria-pressed': 'false' });
    bar.appendChild(slower);
    bar.appendChild(tool('Picture back', function () { step(-1); }, { title: 'Comma' }));
    bar.appendChild(tool('Picture on', function () { step(1); }, { title: 'Full stop' }));
    bar.appendChild(tool('Full screen', screen, { title: 'F' }));
    var larger = tool('Large', large, { title: 'L', 'aria-pressed': 'false' });
    bar.appendChild(larger);
    bar.appendChild(tool('Wrong game', function () { player.wrong(); }, {}));
    bar.appendChild(tool('Close', close, { title: 'Escape' }));
    if (KIT.remembered('large')) { large(); }
    var keys = { ArrowRight: function () { show(now + 1); }, PageDown: function () { show(now + 1); }, ArrowLeft: function () { show(now - 1); },
      PageUp: function () { show(now - 1); }, ' ': pause, r: replay, h: slow, ',': function () { step(-1); }, '.': function () { step(1); },
      f: screen, l: large, Escape: close };
    document.addEventListener('keydown', function (e) {
      var key = e.key.length === 1 ? e.key.toLowerCase() : e.key;
      if (box.hidden || !keys[key] || e.altKey || e.ctrlKey || e.metaKey) { return; }
      if (key === ' ' && e.target.tagName === 'BUTTON') { return; }
      e.preventDefault();
      keys[key]();
    });
    return { open: function (all, i) {
      if (all.length === 0) { return; }
      clips = all;
      back = document.activeElement;
      box.hidden = false;
      document.body.classList.add('staged');
      part('.bar button:nth-child(2)').focus();
      show(i);
    } };
  })();

  at('meeting').hidden = false;
  listTools();
  readyTools();
  if (rows.length === 0) {
    at('ready-said').textContent = 'No row of these sheets has a second of the video: fill video_s, or give a sync sheet (docs/sheets.md).';
  }
  function all() {
    if (rows.length > 0) { ready(); }
    list();
  }
  LIST.watch(list);
  BOOK.onUnits(all);
  all();
})();
