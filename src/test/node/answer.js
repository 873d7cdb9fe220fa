// Answers questions of music theory with two libraries, of memory with a third and of MIDI files with a fourth: a JSON array of strings a line in,
// one a line out.
'use strict';

const readline = require('readline');
const { Chord, Note, Scale } = require('tonal');
const { chordParserFactory } = require('chord-symbol/lib/chord-symbol.js');
const { parseMidi } = require('midi-file');
const { FSRS, generatorParameters } = require('ts-fsrs');

const parseSymbol = chordParserFactory();
const fsrs = new FSRS(generatorParameters({ enable_fuzz: false, enable_short_term: true }));

const answers = {
    // The notes of a chord: ["chord", "C", "maj7"].
    chord: (root, kind) => Chord.get(root + kind).notes,
    // The notes of a scale: ["scale", "C", "harmonic minor"].
    scale: (tonic, kind) => Scale.get(tonic + ' ' + kind).notes,
    // A pitch moved by an interval: ["transpose", "C4", "3m"].
    transpose: (pitch, interval) => [Note.transpose(pitch, interval)],
    // The bass and then the degrees of a chord symbol; nothing if it cannot be read: ["symbol", "Cm7/Eb"].
    symbol: (text) => {
        const chord = parseSymbol(text);
        return chord.error ? [] : [chord.normalized.bassNote || chord.normalized.rootNote, ...chord.normalized.intervals];
    },
    // The notes of a MIDI file, each "channel pitch tick length velocity", in order of time; then its tempo in
    // microseconds, time signature, key signature and texts with their ticks: ["midi", "4D546864…"] in hexadecimal.
    midi: (hex) => {
        const file = parseMidi(Buffer.from(hex, 'hex'));
        const notes = [];
        const said = [];
        for (const track of file.tracks) {
            const down = {};
            let now = 0;
            for (const event of track) {
                now += event.deltaTime;
                const key = event.channel + ' ' + event.noteNumber;
                if (event.type === 'noteOn') {
                    down[key] = [now, event.velocity];
                } else if (event.type === 'noteOff') {
                    notes.push([event.channel, event.noteNumber, down[key][0], now - down[key][0], down[key][1]]);
                } else if (event.type === 'setTempo') {
                    said.push('tempo ' + event.microsecondsPerBeat);
                } else if (event.type === 'timeSignature') {
                    said.push('metre ' + event.numerator + '/' + event.denominator);
                } else if (event.type === 'keySignature') {
                    said.push('key ' + event.key + ' ' + event.scale);
                } else if (event.type === 'text') {
                    said.push('text ' + now + ' ' + event.text);
                }
            }
        }
        notes.sort((a, b) => a[2] - b[2] || a[0] - b[0] || a[1] - b[1]);
        return [...notes.map((note) => note.join(' ')), ...said];
    },
    // Stability, difficulty and interval after ratings from 1 to 4, each so many whole days after the last:
    // ["memory", "0 3", "2 1"].
    memory: (...reviews) => {
        let memory = null;
        for (const review of reviews) {
            const [days, rating] = review.split(' ').map(Number);
            memory = fsrs.next_state(memory, days, rating);
        }
        return [memory.stability, memory.difficulty, fsrs.next_interval(memory.stability, 0)].map(String);
    },
};

readline.createInterface({ input: process.stdin }).on('line', (line) => {
    const [question, ...about] = JSON.parse(line);
    process.stdout.write(JSON.stringify(answers[question](...about)) + '\n');
});
