package monochord.shell.verb;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** All verbs, in the order in which help lists them. */
public final class Verbs {
    private static final Map<String, String> ELSEWHERE = Map.of("practice", "practise", "recolor", "recolour");

    private final Map<String, Verb> byWord = new LinkedHashMap<>();

    public Verbs() {
        List<Verb> verbs = new ArrayList<>(List.of(
                new KeyVerb(),
                new ShowVerb(),
                new NameVerb(),
                new NumeralVerb(),
                new BorrowVerb(),
                new AfterVerb(),
                new MotionVerb(),
                new FitVerb(),
                new RecolourVerb(),
                new VoiceVerb(),
                new TransposeVerb(),
                new PlayVerb(),
                new CompareVerb(),
                new TempoVerb(),
                new PatchVerb(),
                new BankVerb(),
                new StopVerb(),
                new KeysVerb(),
                new LessonsVerb(),
                new LearnVerb(),
                new AskVerb(),
                new PractiseVerb(),
                new HearVerb(),
                new ReviewVerb(),
                new ProgressVerb(),
                new NotesVerb()));
        verbs.addAll(List.of(HelpOnQuestion.values()));
        verbs.add(new CheckVerb());
        verbs.add(new PresentVerb());
        verbs.add(new BackVerb());
        verbs.addAll(List.of(new NoteVerb(), new SaveVerb(), new OpenVerb(), new ReplayVerb(), new PublishVerb()));
        verbs.add(new HelpVerb(this));
        verbs.add(new QuitVerb());
        verbs.forEach(verb -> byWord.put(verb.usage().word(), verb));
    }

    public Collection<Verb> all() {
        return byWord.values();
    }

    public Collection<String> words() {
        return byWord.keySet();
    }

    /** The verb of that word, in whatever case; as it is spelled across the sea, too. */
    public Optional<Verb> find(String word) {
        String lower = word.toLowerCase(Locale.ROOT);
        return Optional.ofNullable(byWord.get(ELSEWHERE.getOrDefault(lower, lower)));
    }
}
