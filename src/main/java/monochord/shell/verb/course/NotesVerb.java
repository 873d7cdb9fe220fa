package monochord.shell.verb.course;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.theory.NoteNaming;
import monochord.theory.Unreadable;
import monochord.view.Answer;
import monochord.view.NotesCalled;

/** By what names notes go, from now on. */
final class NotesVerb implements Verb {
    private static final String EXAMPLE = "notes german";

    @Override
    public Usage usage() {
        return Usage.of(
                        "notes",
                        Usage.Topic.LEARNING,
                        "notes [english, german or latin]",
                        "call the notes A B C, A H C or La Si Do",
                        EXAMPLE,
                        "notes latin",
                        "notes")
                .withSmallWords();
    }

    @Override
    public boolean readsMusic() {
        return false;
    }

    @Override
    public boolean isAside() {
        return true;
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        return sentence.body().isEmpty()
                ? new NotesCalled(sitting.naming(), true)
                : sitting.call(sentence.body().read(NotesVerb::naming));
    }

    private static NoteNaming naming(String text) {
        return NoteNaming.of(text)
                .or(() -> byCountry(text.toLowerCase(Locale.ROOT)))
                .orElseThrow(() -> Unreadable.because(
                        text,
                        0,
                        "a way to call the notes",
                        "there are english, german and latin; to name a chord, type name and its notes",
                        EXAMPLE));
    }

    private static Optional<NoteNaming> byCountry(String word) {
        return switch (word) {
            case "deutsch" -> Optional.of(NoteNaming.GERMAN);
            case "italian", "french", "spanish", "portuguese", "solfa", "do re mi" -> Optional.of(NoteNaming.LATIN);
            default -> Optional.empty();
        };
    }

    @Override
    public List<String> candidates(Sitting sitting) {
        return Arrays.stream(NoteNaming.values()).map(NoteNaming::toString).toList();
    }
}
