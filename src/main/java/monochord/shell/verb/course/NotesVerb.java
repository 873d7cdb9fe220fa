package monochord.shell.verb.course;

import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.words;

import java.util.Locale;
import java.util.Optional;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.theory.note.NoteNaming;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.NotesCalled;

/** By what names notes go, from now on. */
final class NotesVerb implements Verb {
    private static final String EXAMPLE = "notes german";

    @Override
    public String word() {
        return "notes";
    }

    @Override
    public Usage usage() {
        return Usage.of(word(), Usage.VerbTopic.LEARNING, Phrase.of("call the notes A B C, A H C or La Si Do"))
                .form(may(words("english", "german", "latin")))
                .examples(EXAMPLE, "notes latin", "notes");
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
}
