package monochord.shell;

import java.util.Optional;
import java.util.Set;
import monochord.harmony.Glossary;
import monochord.harmony.Music;
import monochord.harmony.MusicText;
import monochord.shell.line.LineMode;
import monochord.shell.sentence.Sentence;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.Verbs;
import monochord.text.Nearest;
import monochord.text.Phrase;
import monochord.text.naming.AsTyped;
import monochord.theory.Key;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.Refusal;
import monochord.view.Statement;
import monochord.view.music.MusicAnswer;

/** A line without a verb: music, or else Java, or else something that was nearly one of them. */
record MusicLine(Verbs verbs, Sitting sitting, SmallTalk host) {
    private static final int LONGEST_QUOTE = 30;
    private static final String BEGINS_MUSIC = "ABCDEFGIVNb#♭♯1234567|";
    private static final Phrase WHAT_IS_READ = Phrase.of(
            "Type music, such as {0}, IV I V, {1} or {2}, or one of the words that help lists.",
            Phrase.toType("F C G"), Phrase.toType("Abmaj7"), Phrase.toType("D major"));

    /** What was typed, by the note names the learner goes by. */
    private AsTyped heard(String text) {
        return AsTyped.of(text, sitting.naming());
    }

    /** @param word its first */
    Answer read(String text, String word) {
        AsTyped typed = heard(text);
        try {
            Sentence sentence = Sentence.parse(typed.english(), Set.of("in"), Set.of());
            Key key = sentence.clause("in").map(part -> part.read(Key::parse)).orElseGet(sitting::key);
            Music music = sentence.body().read(said -> MusicText.read(said, key));
            sitting.stage().remember(music);
            sitting.teaching().firstStart().giveWay();
            return MusicAnswer.of(music, key);
        } catch (Unreadable unreadable) {
            Optional<Phrase> told =
                    sitting.cells().holds(word) ? Optional.empty() : Glossary.explain(text, sitting.key());
            if (told.isPresent()) {
                return Statement.of(told.get());
            }
            return isJava(text, word)
                    ? sitting.cells().begin(text)
                    : host.meet(text).orElseGet(() -> neither(typed, word, unreadable));
        }
    }

    /**
     * Whether a line that is no music is for the cell. Only what looks like Java is handed there at all, so that a slip in
     * a verb or a chord starts no JVM; what looks like Java and like a slip, too, must be Java without a fault.
     */
    private boolean isJava(String text, String word) {
        if (!JavaText.mayBe(text, sitting.cells()::holds)) {
            return false;
        }
        boolean slip = didYouMean(word).isPresent() || JavaText.beginsAsMusic(text);
        return !slip || sitting.cells().reads(text);
    }

    /** A line that begins as music begins is music gone wrong; any other is taken for a verb that does not exist. */
    private Answer neither(AsTyped typed, String word, Unreadable unreadable) {
        Optional<Phrase> near = didYouMean(word);
        int place = typed.typedPlace(unreadable.place());
        boolean named = typed.changeAt(0).isPresent()
                || ForeignNoteNames.at(place, typed.typed(), typed.naming()).isPresent();
        boolean musical = BEGINS_MUSIC.indexOf(typed.english().charAt(0)) >= 0;
        if (named || near.isEmpty() && (musical || place > word.length())) {
            return refusal(unreadable, typed, Phrase.NOTHING);
        }
        String shown = word.length() > LONGEST_QUOTE ? word.substring(0, LONGEST_QUOTE) + "…" : word;
        return new Refusal(
                Phrase.of("\"{0}\" is neither music nor a word I know.", Phrase.typed(shown)),
                1,
                near.orElseGet(this::advice));
    }

    private Phrase advice() {
        LineMode mode = sitting.mode();
        return switch (mode) {
            case NAMES ->
                Phrase.of("Type english, german or latin; Enter keeps {0} and goes on.", Phrase.typed("A B C"));
            case LESSON_PAGE, LESSON_JAVA -> mode.row().then(WHAT_IS_READ);
            default -> WHAT_IS_READ;
        };
    }

    /** A refusal that quotes what was typed, and says so where a name is one of another country. */
    static Refusal refusal(Unreadable unreadable, AsTyped typed, Phrase advice) {
        Unreadable restored = typed.restored(unreadable);
        return Refusal.of(
                restored,
                ForeignNoteNames.at(restored.place(), typed.typed(), typed.naming())
                        .orElse(advice));
    }

    /** The verb that a word is nearly. */
    Optional<Phrase> didYouMean(String word) {
        return Nearest.to(word, verbs.words()).map(verb -> Phrase.of("Did you mean {0}?", Phrase.typed(verb)));
    }
}
