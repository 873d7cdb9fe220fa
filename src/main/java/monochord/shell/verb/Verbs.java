package monochord.shell.verb;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import monochord.shell.sentence.Verb;
import monochord.shell.verb.classroom.ClassroomVerbs;
import monochord.shell.verb.course.CourseVerbs;
import monochord.shell.verb.keeping.KeepingVerbs;
import monochord.shell.verb.music.MusicVerbs;
import monochord.shell.verb.paper.PaperVerbs;
import monochord.shell.verb.song.SongVerbs;
import monochord.shell.verb.sounding.SoundingVerbs;
import monochord.shell.verb.writing.WritingVerbs;

/** All verbs, in the order in which help lists them. */
public final class Verbs {
    private static final Map<String, String> ELSEWHERE =
            Map.of("practice", "practise", "recolor", "recolour", "harmonize", "harmonise");

    private final Map<String, Verb> byWord = new LinkedHashMap<>();

    public Verbs() {
        List<Verb> verbs = new ArrayList<>(MusicVerbs.all());
        verbs.addAll(SongVerbs.all());
        verbs.addAll(SoundingVerbs.all());
        verbs.addAll(CourseVerbs.all());
        verbs.addAll(WritingVerbs.all());
        verbs.addAll(PaperVerbs.all());
        verbs.addAll(ClassroomVerbs.all());
        verbs.addAll(KeepingVerbs.all(this::find));
        verbs.add(new HelpVerb(this));
        verbs.add(new QuitVerb());
        verbs.forEach(verb -> byWord.put(verb.word(), verb));
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
