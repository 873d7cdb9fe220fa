package monochord.shell.verb.music;

import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.takes;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.ChordEvent;
import monochord.harmony.Progression;
import monochord.harmony.after.Continuation;
import monochord.harmony.after.Continuations;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.SentenceKey;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.advice.AfterAnswer;

/** Says where a chord goes next in a key. */
final class AfterVerb implements Verb {
    private static final int BEST = 6;

    @Override
    public String word() {
        return "after";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.EXPLORING,
                        Phrase.of("say where a chord goes next, with reasons and counts from songs"))
                .form(takes(Value.NUMERAL, Value.NUMBER, Value.CHORD), may(clause("in", Value.KEY)))
                .examples("after bVI in D", "after Fm in C", "after V7/V in Eb");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Key key = SentenceKey.of(sentence, sitting);
        ChordEvent slot = sentence.body().read(text -> one(text, key));
        List<Continuation> ways = Continuations.ways(slot.numeral(), key, Counts.SONGS);
        return new AfterAnswer(key, slot.numeral(), told(ways), Counts.SCORES.after(slot.chord(), key));
    }

    /** All that songs go often enough, and of the rest as many as make six. */
    private static List<Continuation> told(List<Continuation> ways) {
        int counted = (int) ways.stream()
                .filter(way -> way.isCountedFrom(AfterAnswer.LEAST_SHARE))
                .count();
        List<Continuation> told = new ArrayList<>();
        for (Continuation way : ways) {
            boolean isCounted = way.isCountedFrom(AfterAnswer.LEAST_SHARE);
            boolean isTold = told.stream().anyMatch(one -> one.isSameTriadAs(way));
            if (!isTold && (isCounted || told.size() < Math.max(BEST, counted))) {
                told.add(way);
            }
        }
        return told;
    }

    private static ChordEvent one(String text, Key key) {
        List<ChordEvent> slots = Progression.parse(text, key).slots();
        if (slots.size() > 1) {
            throw Unreadable.because(
                    text, 0, "a chord", "one chord is asked for, and several stand here", "after bVI in D");
        }
        return slots.get(0);
    }
}
