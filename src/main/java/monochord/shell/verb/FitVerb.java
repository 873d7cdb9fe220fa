package monochord.shell.verb;

import monochord.harmony.Music;
import monochord.harmony.Progression;
import monochord.harmony.melody.Fit;
import monochord.page.musicxml.SheetFault;
import monochord.shell.answer.Answer;
import monochord.shell.answer.FitAnswer;
import monochord.shell.answer.Saying;
import monochord.shell.sitting.Sitting;
import monochord.theory.Unreadable;

/** Judges a tune over chords. */
final class FitVerb implements Verb {
    private static final String EXAMPLE = "fit E4:2 D4 C4 over F G Am in C";

    @Override
    public Usage usage() {
        return Usage.of(
                        "fit",
                        Usage.Topic.EXPLORING,
                        "fit MELODY over PROGRESSION [in KEY], or fit --file LEADSHEET",
                        "say what each note of a tune does over its chord, and what would fit",
                        EXAMPLE,
                        "fit G4:2 E4 D4 | C4:4 over bVI | I in D")
                .withSmallWords("over", "in")
                .withOptions("file");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Tune tune;
        try {
            tune = Tune.read(sentence, "over", sitting);
        } catch (SheetFault fault) {
            return Saying.failed(fault.getMessage());
        }
        Progression chords = tune.progression()
                .orElseThrow(() -> Unreadable.because(
                        sentence.whole(),
                        sentence.whole().length(),
                        "a tune over chords",
                        "expected over and chords",
                        EXAMPLE));
        sitting.stage().remember(new Music.OneProgression(chords));
        return new FitAnswer(Fit.of(tune.melody(), chords), tune.remarks());
    }
}
