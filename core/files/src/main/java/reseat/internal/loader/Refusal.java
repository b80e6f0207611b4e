package reseat.internal.loader;

/** The reason why a plugin is not loaded; the message is for users. */
final class Refusal extends Exception {

    private static final long serialVersionUID = 1L;

    Refusal(String why) {
        super(why);
    }

    /** Creates a refusal from something that a plugin threw. */
    static Refusal of(Throwable thrown) {
        if (thrown instanceof Refusal refusal) {
            return refusal;
        }
        Throwable cause = thrown;
        while (cause.getCause() != null
                && (cause instanceof java.util.ServiceConfigurationError
                        || cause instanceof ExceptionInInitializerError
                        || cause instanceof java.lang.reflect.InvocationTargetException)) {
            cause = cause.getCause();
        }
        String message = cause.getMessage();
        return new Refusal(
                "it failed: "
                        + cause.getClass().getSimpleName()
                        + (message == null ? "" : ": " + message.lines().findFirst().orElse("")));
    }

    String why() {
        return String.valueOf(getMessage());
    }
}
