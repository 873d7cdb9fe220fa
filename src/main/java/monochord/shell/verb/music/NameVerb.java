package monochord.shell.verb.music;

import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.takes;

import java.util.ArrayList;
import java.util.List;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.theory.ChordNames;
import monochord.theory.Key;
import monochord.theory.note.Clause;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.music.NamesAnswer;

/** Says what chord some notes make. */
final class NameVerb implements Verb {
    private static final int MOST_NOTES = 24;

    @Override
    public String word() {
        return "name";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.EXPLORING,
                        Phrase.of("say what chord these notes make, the lowest first"))
                .form(takes(Value.NOTES), may(clause("in", Value.KEY)))
                .examples("name C E G A", "name Ab C Eb G in C");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        List<NoteName> notes = sentence.body().read(NameVerb::notes);
        Key key = sentence.clause("in").map(part -> part.read(Key::parse)).orElse(null);
        return new NamesAnswer(notes, ChordNames.of(notes, key));
    }

    private static List<NoteName> notes(String text) {
        List<NoteName> notes = new ArrayList<>();
        int place = 0;
        while (place < text.length()) {
            int end = endOfNote(text, place);
            if (end > place) {
                notes.add(note(text, place, end));
            }
            place = end + 1;
        }
        if (notes.isEmpty() || notes.size() > MOST_NOTES) {
            throw Unreadable.because(
                    text, 0, "a set of notes", Clause.of("expected 1 to {0} notes", MOST_NOTES), "C E G A");
        }
        return notes;
    }

    private static int endOfNote(String text, int place) {
        int end = place;
        while (end < text.length()
                && !Character.isWhitespace(text.charAt(end))
                && ",-/".indexOf(text.charAt(end)) < 0) {
            end++;
        }
        return end;
    }

    private static NoteName note(String text, int place, int end) {
        String word = text.substring(place, end);
        boolean octave = Character.isDigit(word.charAt(word.length() - 1));
        try {
            return octave ? Pitch.parse(word).name() : NoteName.parse(word);
        } catch (Unreadable unreadable) {
            throw unreadable.within(text, place);
        }
    }
}
