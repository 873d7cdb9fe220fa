package monochord.shell.verb.paper;

import static monochord.shell.sentence.FormPart.alone;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.option;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import monochord.shell.sentence.FormPart;
import monochord.shell.sentence.NewFile;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Value;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.text.StyledText;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.staff.StaffMusic;
import monochord.view.staff.StaffSvg;

/** The words {@code staff --svg FILE} behind a verb that shows music: what it shows is written on staves. */
public final class StaffFile {
    private static final String STAFF = "staff";
    private static final String SVG = "svg";

    private StaffFile() {}

    /** How they are written. */
    public static FormPart form() {
        return may(alone(STAFF), option(SVG, Value.OUT), may(option(NewFile.OVER)));
    }

    /**
     * What came of writing the picture, or nothing if none is asked for.
     *
     * @param example a sentence of the verb that works
     * @throws Unreadable if it is not said where the picture goes, or that there are to be staves
     */
    public static Optional<Answer> asked(
            Sentence sentence, Sitting sitting, Supplier<StaffMusic> music, String example) {
        boolean staff = sentence.clause(STAFF).isPresent();
        if (!staff && !sentence.has(SVG) && !sentence.has(NewFile.OVER)) {
            return Optional.empty();
        }
        if (!staff || !sentence.has(SVG) || !sentence.clause(STAFF).get().isEmpty()) {
            throw Unreadable.because(
                    sentence.whole(),
                    sentence.whole().length(),
                    "a picture of staves",
                    "the word staff and a file are needed, and nothing between them",
                    example);
        }
        Reader reader = Reader.of(Signs.MUSIC.with(sitting.naming()));
        NewFile file = NewFile.text(sentence, SVG, sitting, () -> StaffSvg.file(music.get(), reader))
                .orElseThrow();
        return Optional.of(NewFile.write(List.of(file), sentence, sitting, new StaffWritten(file.name())));
    }

    /** Says where the picture is. */
    private record StaffWritten(String file) implements Answer {
        @Override
        public StyledText text(Look look) {
            return StyledText.builder(look.reader())
                    .line(Phrase.of("Written: {0}", Phrase.typed(file)))
                    .build()
                    .wrapped(look.width());
        }

        @Override
        public void json(Json json) {
            json.put("kind", "staff").put("file", file);
        }
    }
}
