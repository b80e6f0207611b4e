package wrong.text;

public class KnowsModel {
    wrong.model.Device known;
}
