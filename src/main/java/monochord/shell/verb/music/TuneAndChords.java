package monochord.shell.verb.music;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.harmony.Progression;
import monochord.harmony.melody.Melody;
import monochord.score.BarGrid;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.SentenceKey;
import monochord.shell.sitting.Sitting;
import monochord.song.musicxml.LeadSheet;
import monochord.song.musicxml.LeadSheetFile;
import monochord.song.musicxml.SheetFault;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Beats;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;

/**
 * A tune and perhaps its chords, as a sentence or a file gives them.
 *
 * @param remarks what is to be known about how a file was read
 */
record TuneAndChords(Melody melody, Optional<Progression> progression, List<Phrase> remarks) {
    /** The option that names a file. */
    static final String FILE = "file";

    /**
     * The tune is the body of the sentence and the chords stand behind {@code over}; with a file both come from there,
     * but chords that are written go before those of the file.
     *
     * @throws SheetFault if the file cannot be read
     */
    static TuneAndChords read(Sentence sentence, String over, Sitting sitting) throws SheetFault {
        if (!sentence.has(FILE)) {
            Melody melody = sentence.body().read(Melody::parse);
            Key key = SentenceKey.of(sentence, sitting);
            return new TuneAndChords(melody, chords(sentence, over, key), List.of());
        }
        LeadSheet sheet = sheet(sentence.option(FILE).orElseThrow(), sitting);
        Key key = sentence.clause("in").map(part -> part.read(Key::parse)).orElse(sheet.key());
        Progression progression = chords(sentence, over, key).orElse(sheet.progression());
        return new TuneAndChords(melody(sheet, sentence), Optional.of(progression), remarks(sheet));
    }

    private static Optional<Progression> chords(Sentence sentence, String over, Key key) {
        return sentence.clause(over).map(part -> part.read(text -> Progression.parse(text, key)));
    }

    static LeadSheet sheet(Sentence.SentencePart file, Sitting sitting) throws SheetFault {
        return LeadSheetFile.read(file.read(sitting.outside()::file), file.text());
    }

    /** @throws SheetFault if the file that the sentence names holds chords alone */
    static Melody melody(LeadSheet sheet, Sentence sentence) throws SheetFault {
        Phrase name = Phrase.typed(sentence.option(FILE).orElseThrow().text());
        return sheet.tune().orElseThrow(() -> new SheetFault(Phrase.of("{0}: chords stand in it, and no tune", name)));
    }

    /**
     * The tune in bars of a metre.
     *
     * @throws Unreadable if it is none, or the tune shows other bars
     */
    static Melody inBars(Melody tune, String metre) {
        Beats bar = BarGrid.parse(metre).bar();
        if (tune.bar().filter(shown -> !shown.equals(bar)).isPresent()) {
            throw otherBars(tune, bar, metre);
        }
        return new Melody(tune.notes(), tune.beats(), Optional.of(bar), tune.pickup());
    }

    /** That a metre is not that of the bar lines of a tune. */
    static Unreadable otherBars(Melody tune, Beats bar, String metre) {
        return Unreadable.because(
                metre,
                0,
                "the metre of this tune",
                Clause.of(
                        "the bars of the tune have {0} quarters, and these would have {1}",
                        tune.bar().orElseThrow().toString(), bar.toString()),
                "3/4");
    }

    static List<Phrase> remarks(LeadSheet sheet) {
        Phrase title = sheet.title().isEmpty() ? nameless(sheet) : Phrase.typed(sheet.title());
        return Stream.concat(Stream.of(Phrase.sentence("{0}, in {1}.", title, sheet.key())), sheet.remarks().stream())
                .toList();
    }

    private static Phrase nameless(LeadSheet sheet) {
        return sheet.tune().isPresent() ? Phrase.of("a tune") : Phrase.of("a chart");
    }
}
