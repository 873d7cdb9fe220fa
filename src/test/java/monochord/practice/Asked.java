package monochord.practice;

import java.util.List;
import monochord.practice.skill.Skills;
import monochord.text.Phrase;
import monochord.theory.Key;

/** Asks as the prompt does. */
final class Asked {
    private Asked() {}

    static Question question(String skill, String subject, String key) {
        return Skills.find(skill).orElseThrow().question(Key.parse(key), subject);
    }

    static Verdict verdict(String skill, String subject, String key, String answer) {
        return question(skill, subject, key).judge(answer);
    }

    /** In English. */
    static List<String> words(List<Phrase> phrases) {
        return phrases.stream().map(Phrase::toString).toList();
    }
}
