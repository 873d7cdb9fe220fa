// Answers questions of music theory with two libraries and of memory with a third: a JSON array of strings a line in,
// one a line out.
'use strict';

const readline = require('readline');
const { Chord, Note, Scale } = require('tonal');
const { chordParserFactory } = require('chord-symbol/lib/chord-symbol.js');
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
