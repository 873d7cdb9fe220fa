package monochord.shell.verb.music;

import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.takes;

import monochord.harmony.ChordEvent;
import monochord.harmony.Progression;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.SentenceKey;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.view.Answer;
import monochord.view.music.ChordRow;
import monochord.view.music.NumeralAnswer;
import monochord.view.music.ProgressionAnswer;

/** Turns numerals, numbers and chord symbols into each other. */
final class NumeralVerb implements Verb {
    @Override
    public String word() {
        return "numeral";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.EXPLORING,
                        Phrase.of("say what a chord is in a key, and where it comes from"))
                .form(takes(Value.NUMERAL, Value.NUMBER, Value.CHORD), may(clause("in", Value.KEY)))
                .examples("numeral bVI in D", "numeral Abmaj7 in C", "numeral V7/V in Eb");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Key key = SentenceKey.of(sentence, sitting);
        Progression progression = sentence.body().read(text -> Progression.parse(text, key));
        if (progression.slots().size() > 1) {
            return new ProgressionAnswer(progression);
        }
        ChordEvent slot = progression.slots().get(0);
        return new NumeralAnswer(new ChordRow(slot.chord(), slot.numeral(), key));
    }
}
