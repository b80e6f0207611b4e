package wrong.internal.text;

public class KnowsModel {
    wrong.model.Device known;
}
