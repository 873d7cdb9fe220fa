package monochord.shell.verb.music;

import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.option;
import static monochord.shell.sentence.FormPart.orAgain;
import static monochord.shell.sentence.FormPart.takes;

import java.util.Optional;
import monochord.harmony.Progression;
import monochord.harmony.melody.Fit;
import monochord.harmony.melody.Melody;
import monochord.shell.playback.Playable;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.PlaybackState;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.sounding.Recording;
import monochord.song.musicxml.SheetFault;
import monochord.text.Phrase;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.Statement;
import monochord.view.advice.FitAnswer;

/** Judges a tune over chords. */
final class FitVerb implements Verb {
    private static final String EXAMPLE = "fit E4:2 D4 C4 over F G Am in C";

    @Override
    public String word() {
        return "fit";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.EXPLORING,
                        Phrase.of("say what each note of a tune does over its chord, and what would fit"))
                .form(
                        takes(Value.MELODY),
                        clause("over", Value.PROGRESSION),
                        may(clause("in", Value.KEY)),
                        orAgain(),
                        option(TuneAndChords.FILE, Value.LEADSHEET))
                .form(Recording.form())
                .examples(EXAMPLE, "fit G4:2 E4 D4 | C4:4 over bVI | I in D");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        TuneAndChords tune;
        try {
            tune = TuneAndChords.read(sentence, "over", sitting);
        } catch (SheetFault fault) {
            return Statement.failed(fault.phrase());
        }
        Progression chords = tune.progression()
                .orElseThrow(() -> Unreadable.because(
                        sentence.whole(),
                        sentence.whole().length(),
                        "a tune over chords",
                        "expected over and chords",
                        EXAMPLE));
        Fit fit = Fit.of(tune.melody(), chords);
        remember(fit, sitting.stage());
        return Recording.besides(new FitAnswer(fit, tune.remarks()), sentence, sitting);
    }

    /** The tune over the chords; and where notes clash, the same with what would fit, to be compared. */
    private static void remember(Fit fit, PlaybackState stage) {
        Playable sung = take(fit.melody(), fit);
        Melody repaired = fit.repaired();
        if (repaired.equals(fit.melody())) {
            stage.remember(sung);
        } else {
            stage.remember(sung, sung, take(repaired, fit));
        }
    }

    private static Playable take(Melody melody, Fit fit) {
        return Playable.of(
                melody, Optional.of(fit.progression()), fit.progression().key());
    }
}
