package monochord.shell.verb;

import java.util.List;
import monochord.harmony.Borrowing;
import monochord.shell.answer.Answer;
import monochord.shell.answer.BorrowAnswer;
import monochord.shell.sitting.Sitting;
import monochord.theory.Key;
import monochord.theory.ScaleKind;
import monochord.theory.Unreadable;

/** Lists the chords a key can borrow from its parallel modes. */
final class BorrowVerb implements Verb {
    @Override
    public Usage usage() {
        return Usage.of(
                "borrow",
                Usage.Topic.EXPLORING,
                "borrow [MODE] [in KEY]",
                "list the chords a key can borrow from its parallel modes",
                "borrow in D",
                "borrow mixolydian in A");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Key key = Keys.of(sentence, sitting);
        if (sentence.body().isEmpty()) {
            return new BorrowAnswer(key, null, Borrowing.table(key));
        }
        ScaleKind source = sentence.body().read(BorrowVerb::sevenNotes);
        return new BorrowAnswer(key, source, Borrowing.table(key, source));
    }

    private static ScaleKind sevenNotes(String text) {
        ScaleKind kind = ScaleKind.parse(text);
        if (kind.degrees().size() != 7) {
            throw Unreadable.because(
                    text, 0, "a mode to borrow from", "chords are built on scales of seven notes", "minor");
        }
        return kind;
    }

    @Override
    public List<String> candidates(Sitting sitting) {
        return ScaleKind.all().stream()
                .filter(kind -> kind.degrees().size() == 7)
                .map(ScaleKind::toString)
                .toList();
    }
}
