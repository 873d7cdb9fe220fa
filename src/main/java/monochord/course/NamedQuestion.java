package monochord.course;

/** One question that was asked for by name, and after it perhaps another of its kind. */
public record NamedQuestion() implements Activity {
    @Override
    public int nearness() {
        return 3;
    }
}
