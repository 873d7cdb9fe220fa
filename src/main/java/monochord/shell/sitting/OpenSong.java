package monochord.shell.sitting;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import monochord.harmony.colour.Idea;
import monochord.song.Song;
import monochord.song.SongPlace;
import monochord.view.Answer;

/** The song that is open at the line, what was done to it, and what was proposed for it last. */
public final class OpenSong {
    private static final int MOST_BACK = 100;

    private final Deque<Song> before = new ArrayDeque<>();
    private NewSong newSong;
    private Song song;
    private Song opened;
    private Path file;
    private SongPlace place;
    private SongPlace proposedFor;
    private List<Idea> ideas = List.of();

    /** @param itsFile where changes are saved; null for a song that came from another format */
    public void open(Song newSong, Path itsFile) {
        song = newSong;
        opened = newSong;
        file = itsFile;
        before.clear();
        ideas = List.of();
        place = null;
    }

    /** Begins a song in a file that is not there, or goes on with one that has no section; what is asked first. */
    public Answer begin(Path newFile, String name, Optional<Song> begun, Sitting sitting) {
        String title = name.replaceFirst("(?i)\\.md$", "")
                .replaceFirst(".*/", "")
                .replace('-', ' ')
                .replace('_', ' ');
        newSong = new NewSong(
                sitting,
                newFile,
                name,
                begun.map(its -> NewSongText.begun(its.head())).orElseGet(() -> NewSongText.begun(title)));
        return newSong.begin();
    }

    /** The song that is being begun. */
    public Optional<NewSong> newSong() {
        return Optional.ofNullable(newSong);
    }

    void leaveNew() {
        newSong = null;
    }

    public Optional<Song> song() {
        return Optional.ofNullable(song);
    }

    /** As it was when it was opened. */
    public Optional<Song> opened() {
        return Optional.ofNullable(opened);
    }

    public Optional<Path> file() {
        return Optional.ofNullable(file);
    }

    /** From now on it is kept there. */
    public void keepIn(Path newFile) {
        file = newFile;
    }

    public void change(Song changed) {
        before.push(song);
        if (before.size() > MOST_BACK) {
            before.removeLast();
        }
        song = changed;
        ideas = List.of();
    }

    /** Takes the last change back; whether there was one. */
    public boolean undo() {
        if (before.isEmpty()) {
            return false;
        }
        song = before.pop();
        ideas = List.of();
        return true;
    }

    /** What the sentence that is being read names of the song, perhaps nothing. */
    public void name(SongPlace named) {
        place = named;
    }

    public Optional<SongPlace> place() {
        return Optional.ofNullable(place);
    }

    /** What was proposed for the place that was named. */
    public void propose(List<Idea> proposed) {
        ideas = List.copyOf(proposed);
        proposedFor = place;
    }

    /** The place for which that was. */
    public Optional<SongPlace> proposedFor() {
        return Optional.ofNullable(proposedFor);
    }

    /** In the order in which they were shown. */
    public List<Idea> ideas() {
        return ideas;
    }

    /** Stands as another desk stands. */
    void goOnFrom(OpenSong other) {
        open(other.song, other.file);
        opened = other.opened;
        before.addAll(other.before);
        ideas = other.ideas;
        place = other.place;
        proposedFor = other.proposedFor;
        newSong = null;
    }
}
