package wrong.job;

public class KnowsReader {
    wrong.files.Reader known;
}
