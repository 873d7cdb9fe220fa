package monochord.shell.verb.music;

import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.takes;

import java.util.List;
import monochord.harmony.Borrowing;
import monochord.harmony.Borrowing.Borrowed;
import monochord.harmony.Progression;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.SentenceKey;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.ScaleKind;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.music.BorrowAnswer;
import monochord.view.music.BorrowedAnswer;

/** Lists the chords a key can borrow from its parallel modes. */
final class BorrowVerb implements Verb {
    @Override
    public String word() {
        return "borrow";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.EXPLORING,
                        Phrase.of("list the chords a key can borrow from its parallel modes"))
                .form(may(takes(Value.MODE, Value.CHORD)), may(clause("in", Value.KEY)))
                .examples("borrow in D", "borrow mixolydian in A", "borrow bVI in D");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Key key = SentenceKey.of(sentence, sitting);
        if (sentence.body().isEmpty()) {
            return new BorrowAnswer(key, null, Borrowing.table(key));
        }
        return sentence.body().read(text -> answer(text, key));
    }

    private static Answer answer(String text, Key key) {
        try {
            ScaleKind source = sevenNotes(text);
            return new BorrowAnswer(key, source, Borrowing.table(key, source));
        } catch (Unreadable asScale) {
            return new BorrowedAnswer(key, one(text, key, asScale));
        }
    }

    private static Borrowed one(String text, Key key, Unreadable asScale) {
        List<Chord> chords;
        try {
            chords = Progression.parse(text, key).chords();
        } catch (Unreadable asChord) {
            throw asScale;
        }
        if (chords.size() > 1 || key.isOwn(chords.get(0))) {
            Clause why = chords.size() > 1
                    ? Clause.of("one is shown at a time")
                    : Clause.of("it is the key's own chord in {0}", key);
            throw Unreadable.because(text, 0, "a borrowed chord", why, "borrow bVI in D");
        }
        return Borrowing.borrowed(chords.get(0), key);
    }

    private static ScaleKind sevenNotes(String text) {
        ScaleKind kind = ScaleKind.parse(text);
        if (kind.degrees().size() != 7) {
            throw Unreadable.because(
                    text, 0, "a mode to borrow from", "chords are built on scales of seven notes", "minor");
        }
        return kind;
    }
}
