package monochord.shell.verb.music;

import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.option;
import static monochord.shell.sentence.FormPart.orAgain;
import static monochord.shell.sentence.FormPart.takes;

import java.util.List;
import java.util.Optional;
import monochord.harmony.Music;
import monochord.harmony.Progression;
import monochord.harmony.colour.Recolour;
import monochord.harmony.melody.Melody;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.SentenceKey;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.PlaybackState;
import monochord.shell.sitting.Sitting;
import monochord.shell.sitting.Take;
import monochord.shell.verb.sounding.Recording;
import monochord.song.musicxml.LeadSheet;
import monochord.song.musicxml.SheetFault;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.view.Answer;
import monochord.view.Statement;
import monochord.view.music.RecolourAnswer;

/** Proposes where a progression could take a colour. */
final class RecolourVerb implements Verb {
    @Override
    public String word() {
        return "recolour";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.Topic.EXPLORING,
                        Phrase.of("propose where a progression could take a colour, and why"))
                .form(
                        takes(Value.PROGRESSION),
                        may(clause("in", Value.KEY)),
                        may(clause("under", Value.MELODY)),
                        orAgain(),
                        option(Tune.FILE, Value.LEADSHEET))
                .form(Recording.form())
                .examples("recolour IV I V vi V I in C", "recolour F C G Am in C under A4:2 G4 B4 C5");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        try {
            Answer answer = sentence.has(Tune.FILE) ? ofFile(sentence, sitting) : ofText(sentence, sitting);
            return Recording.besides(answer, sentence, sitting);
        } catch (SheetFault fault) {
            return Statement.failed(fault.phrase());
        }
    }

    private static Answer ofText(Sentence sentence, Sitting sitting) {
        Key key = SentenceKey.of(sentence, sitting);
        Progression progression = sentence.body().read(text -> Progression.parse(text, key));
        return answer(progression, melody(sentence), List.of(), sitting);
    }

    private static Optional<Melody> melody(Sentence sentence) {
        return sentence.clause("under").map(part -> part.read(Melody::parse));
    }

    private static Answer ofFile(Sentence sentence, Sitting sitting) throws SheetFault {
        LeadSheet sheet = Tune.sheet(sentence.option(Tune.FILE).orElseThrow(), sitting);
        Melody melody = melody(sentence).orElse(sheet.melody());
        return answer(sheet.progression(), Optional.of(melody), Tune.remarks(sheet), sitting);
    }

    private static Answer answer(
            Progression progression, Optional<Melody> melody, List<Phrase> remarks, Sitting sitting) {
        Recolour recolour = Recolour.of(progression, melody);
        remember(recolour, melody, sitting.stage());
        return new RecolourAnswer(recolour, remarks);
    }

    private static void remember(Recolour recolour, Optional<Melody> melody, PlaybackState stage) {
        Take best = take(recolour.best(), melody);
        if (recolour.combined().isEmpty()) {
            stage.remember(best);
        } else {
            stage.remember(best, take(recolour.progression(), melody), best);
        }
    }

    private static Take take(Progression progression, Optional<Melody> melody) {
        return melody.map(tune -> Take.of(tune, Optional.of(progression), progression.key()))
                .orElseGet(() -> Take.of(new Music.OneProgression(progression), progression.key()));
    }
}
