package wrong.job;

public class KnowsReader {
    wrong.device.Reader known;
}
