package monochord.shell.verb;

import java.util.List;
import java.util.stream.Stream;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.theory.note.NoteName;
import monochord.view.Answer;
import monochord.view.Statement;

/** The pages of help that are about no verb. */
final class HelpPages {
    private HelpPages() {}

    /** How music is typed. */
    static Statement music() {
        return Statement.of(
                Phrase.of(
                        "Notes: letters with b or #, bb or x for doubles; an octave behind them, {0} is middle {1}.",
                        Phrase.toType("C4"), NoteName.C),
                Phrase.of(
                        "Chords: as bands write them, {0}.",
                        Phrase.toType("Abmaj7 G7sus4 Bb2 F/A Am7b5 Co7 C6/9 E7#9")),
                Phrase.of("Numerals: IV bVI V7/V viiø7 I64; capitals are major, small letters minor, o diminished."),
                Phrase.of("Numbers: 4 1 5 b6; a number alone is the key's own chord, 6- says minor, 1/3 has the third"
                        + " in the bass."),
                Phrase.of(
                        "Scales: {0}, {1}, {2}; without a tonic, on the tonic of the key.",
                        Phrase.toType("D major"), Phrase.toType("E harmonic minor"), Phrase.toType("G mixolydian")),
                Phrase.of("Progressions: any of these in a row. Bars between | share alike, a dot holds, % repeats the"
                        + " bar before."),
                Phrase.of("Small words: in KEY, at BPM, with PATCH. Options: --plain, --ascii; on a command line also"
                        + " --json and --notes."));
    }

    /** How a song's file is written: this page is the grammar. */
    static Statement songFile() {
        return new Statement(
                Stream.of(
                                List.of(Phrase.of(
                                        "A song is a text file. Its head stands between two lines of hyphens:")),
                                code(songHead()),
                                List.of(
                                        Phrase.of(
                                                "Also by:, tempo: (a number) and swing: (the feel in words, such as straight,"
                                                        + " swing, bossa or ballad; without it play goes by metre and tempo)."),
                                        Phrase.of("Below it sections in playing order. A heading that comes again with"
                                                + " nothing below it plays its section again:")),
                                code(songSection()),
                                songGrammar())
                        .flatMap(List::stream)
                        .toList(),
                Answer.DONE);
    }

    private static Phrase[] songHead() {
        return new Phrase[] {
            Phrase.typed("---"),
            Phrase.typed("title: The Water Is Wide"),
            Phrase.typed("key: D"),
            Phrase.typed("metre: 4/4"),
            Phrase.typed("---")
        };
    }

    private static Phrase[] songSection() {
        return new Phrase[] {
            Phrase.typed("## Verse"),
            Phrase.typed("```chords"),
            Phrase.typed("|: D | G . A . |[1 D :|[2 D! \"stop\" |"),
            Phrase.typed("```"),
            Phrase.typed("```tune"),
            Phrase.typed("A3:1 | D4:2 E4 F#4 | G4:3/2 F#4:1/2 E4:2 | D4:4 | D4:3 r:1"),
            Phrase.typed("```"),
            Phrase.typed("```words"),
            Phrase.typed("The wa-ter is wide"),
            Phrase.typed("```")
        };
    }

    private static List<Phrase> songGrammar() {
        return List.of(
                Phrase.of("Chords: names, numerals or numbers; those of a bar share it alike. A dot holds, % is the bar"
                        + " before, r is silence, ! behind a chord is a hit, words in quotes are a cue. Numbers and"
                        + " numerals stay, whatever the key."),
                Phrase.of("Bars: | parts them, || ends a part, |: and :| stand around what is repeated (::| for three"
                        + " times), [1 and [2 begin endings."),
                Phrase.of("Tune: note, octave, colon, beats; a beat is a quarter, without a number it is one. r is a"
                        + " rest, a dot holds on. A short first bar is a pick-up; ... says that the rest is not written"
                        + " yet."),
                Phrase.of("Words: a line to each line of the tune; - between syllables, _ holds, * skips a note, an"
                        + " empty line before the next verse."),
                Phrase.of("## Changes, at the end, lists what was changed and why."),
                Phrase.of("check my-song.md finds what is wrong, line by line. When song my-song.md has opened it, a"
                        + " section or its bars stand behind a verb for their music: recolour verse, play verse bars"
                        + " 1 to 4, rehearse song."));
    }

    /** What stands in lines of code is Java, in which notes go by their English names. */
    static Statement java() {
        return new Statement(
                Stream.of(
                                List.of(Phrase.of(
                                        "What is neither a verb nor music is Java, over as many lines as it needs:")),
                                code(
                                        Phrase.typed("var verse = progression(\"4 1 5 b6\", \"D\")"),
                                        Phrase.typed(
                                                "for (var k : List.of(\"C\", \"Eb\")) show(numeral(\"bVI\", k), k)")),
                                List.of(Phrase.of("Short words, each with the key of the line where none is said:")),
                                code(
                                        Phrase.typed(
                                                "key(\"D\")  chord(\"Bbmaj7\")  scale(\"E dorian\")  numeral(\"bVI\", \"D\")"),
                                        Phrase.typed(
                                                "notes(\"C Eb G\")  pitches(\"C4 Eb4\")  progression(\"F C G Ab\")"),
                                        Phrase.typed(
                                                "borrowed(key(\"D\"))  voice(verse)  show(verse)  play(verse, 84)")),
                                List.of(
                                        Phrase.of("Text stands in quotation marks, notes go by their English names."),
                                        Phrase.of("Behind a dollar sign a name stands in a verb:")),
                                code(Phrase.typed("play $verse in D")),
                                List.of(
                                        Phrase.of("Tab completes. Ctrl-C stops what runs; after ten seconds it stops"
                                                + " by itself."),
                                        Phrase.of("A line cell-seconds=30 in settings.properties, beside your record,"
                                                + " gives it thirty; 0 turns Java off.")))
                        .flatMap(List::stream)
                        .toList(),
                Answer.DONE);
    }

    private static List<Phrase> code(Phrase... lines) {
        return Stream.of(lines)
                .map(line -> Phrase.of("  {0}", line).styled(Style.JAVA))
                .toList();
    }

    static Statement hands() {
        return Statement.of(
                Phrase.of("Warm up, sit well, and take regular breaks; begin no long practice all at once. See a doctor"
                        + " when worried."),
                Phrase.of("So far the student sheet of NASM and PAMA. What follows is common practice, no source."),
                Phrase.of("Five minutes off every half hour; shoulders and wrists loose."),
                Phrase.of(
                        "Stop at pain, tingling or numbness; do not play through it. If it comes back, see a doctor."),
                Phrase.of("voice lays out nothing wider than an octave in one hand, unless you say reach 9 or more."),
                Phrase.of("Roll or split what does not lie well."));
    }

    static Statement band() {
        return Statement.of(
                Phrase.of("A changed chord is agreed with the band before anyone plays it: which bar, which bass note,"
                        + " whose note it meets."),
                Phrase.of("Say it aloud and mark it on the chart. Then play the two bars round it three times, and only"
                        + " then the song."),
                Phrase.of("Whether the tune may change is for the singer to say."),
                Phrase.of("Common practice, no source."));
    }
}
