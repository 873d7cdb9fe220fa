package monochord.shell;

/** Where the program starts. */
public final class Main {
    private Main() {}

    /**
     * Opens the prompt, or runs one verb.
     *
     * @param args the verb and its sentence, or nothing for the prompt
     */
    public static void main(String[] args) {
        System.out.println("Monochord: practical keyboard harmony, one line at a time.");
    }
}
