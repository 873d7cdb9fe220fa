package monochord.shell.verb.song;

import java.util.ArrayList;
import java.util.List;
import monochord.shell.sentence.Sentence;
import monochord.song.Song;
import monochord.song.abc.AbcBook;
import monochord.song.abc.AbcReader;
import monochord.text.Phrase;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;

/** Takes one tune out of a book in ABC, by its number or by its name. */
final class SongBook {
    static final String TUNE = "tune";
    private static final int LONGEST_KEPT = 60_000;

    private SongBook() {}

    /** @throws Unreadable if there is none, or none of that name */
    static Song read(String text, Sentence sentence) {
        AbcBook book = AbcBook.of(text);
        if (book.tunes().isEmpty()) {
            throw Unreadable.because(
                    sentence.whole(), 0, "a file of tunes", "no tune begins in it with X:", "song tunes.abc");
        }
        String asked = sentence.clause(TUNE).map(Sentence.SentencePart::text).orElse("");
        AbcBook.Tune tune =
                asked.isEmpty() ? book.tunes().get(0) : book.find(asked).orElseThrow(() -> none(asked, book, sentence));
        Song song = AbcReader.read(book, tune);
        return asked.isEmpty() && book.tunes().size() > 1 ? song.remarked(several(book)) : song;
    }

    /** As much of a book as a notebook keeps: all of it, of a long one the tune that is asked for. */
    static String kept(String text, Sentence sentence) {
        if (text.length() <= LONGEST_KEPT) {
            return text;
        }
        AbcBook book = AbcBook.of(text);
        String asked = sentence.clause(TUNE).map(Sentence.SentencePart::text).orElse("");
        return asked.isEmpty()
                ? book.text(book.tunes().get(0))
                : book.find(asked).map(book::text).orElse(text);
    }

    private static Unreadable none(String asked, AbcBook book, Sentence sentence) {
        return Unreadable.because(
                sentence.whole(),
                sentence.clause(TUNE).orElseThrow().place(),
                "a tune of this file",
                Clause.of(
                        "none of its {0} tunes has the number or the name {1}",
                        book.tunes().size(), asked),
                "song tunes.abc tune 2");
    }

    private static Phrase several(AbcBook book) {
        List<Phrase> some = new ArrayList<>();
        book.tunes().stream()
                .limit(10)
                .map(tune -> Phrase.typed((tune.number() + " " + tune.title()).strip()))
                .forEach(some::add);
        return Phrase.sentence(
                "This is the first of {0} tunes; with {1} and a number or a name behind it another opens: {2}.",
                book.tunes().size(), Phrase.verb("tune"), Phrase.joined(", ", some));
    }
}
