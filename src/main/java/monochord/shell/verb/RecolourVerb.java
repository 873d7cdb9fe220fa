package monochord.shell.verb;

import java.util.List;
import java.util.Optional;
import monochord.harmony.Music;
import monochord.harmony.Progression;
import monochord.harmony.colour.Recolour;
import monochord.harmony.melody.Melody;
import monochord.page.musicxml.LeadSheet;
import monochord.page.musicxml.SheetFault;
import monochord.shell.answer.Answer;
import monochord.shell.answer.RecolourAnswer;
import monochord.shell.answer.Saying;
import monochord.shell.sitting.Sitting;
import monochord.theory.Key;

/** Proposes where a progression could take a colour. */
final class RecolourVerb implements Verb {
    @Override
    public Usage usage() {
        return Usage.of(
                        "recolour",
                        Usage.Topic.EXPLORING,
                        "recolour PROGRESSION [in KEY] [under MELODY], or recolour --file LEADSHEET",
                        "propose where a progression could take a colour, and why",
                        "recolour IV I V vi V I in C",
                        "recolour F C G Am in C under A4:2 G4 B4 C5")
                .withSmallWords("in", "under")
                .withOptions("file");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        try {
            return sentence.has(Tune.FILE) ? ofFile(sentence, sitting) : ofText(sentence, sitting);
        } catch (SheetFault fault) {
            return Saying.failed(fault.getMessage());
        }
    }

    private static Answer ofText(Sentence sentence, Sitting sitting) {
        Key key = Keys.of(sentence, sitting);
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
            Progression progression, Optional<Melody> melody, List<String> remarks, Sitting sitting) {
        Recolour recolour = Recolour.of(progression, melody);
        sitting.stage().remember(new Music.OneProgression(recolour.best()));
        return new RecolourAnswer(recolour, remarks);
    }
}
