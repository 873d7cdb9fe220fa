package monochord.text;

/** What stands before the last item of a list. */
public enum Conjunction {
    AND,
    OR
}
