package reseat.console.report;

import java.util.List;
import reseat.check.CheckInfo;
import reseat.text.ListText;

/** The page that tells all about all checks, made from what they say of themselves. */
public final class ChecksPage {

    private ChecksPage() {}

    /** Returns the page as Markdown. */
    public static String write(List<CheckInfo> infos) {
        StringBuilder page = new StringBuilder();
        page.append("# The checks\n\n")
                .append("Made by `reseat checks --page` from what the checks say of themselves: do")
                .append(" not edit it. How to run them: [checking.md](checking.md).\n\n")
                .append("| check | severity | what | tags | needs |\n")
                .append("|---|---|---|---|---|\n");
        for (CheckInfo info : infos) {
            page.append("| [")
                    .append(info.id())
                    .append("](#")
                    .append(info.id())
                    .append(") | ")
                    .append(Outcome.word(info.severity()))
                    .append(" | ")
                    .append(cell(info.title()))
                    .append(" | ")
                    .append(cell(String.join(", ", info.tags())))
                    .append(" | ")
                    .append(needs(info))
                    .append(" |\n");
        }
        infos.forEach(info -> one(info, page));
        return page.toString();
    }

    private static void one(CheckInfo info, StringBuilder page) {
        page.append("\n## ")
                .append(info.id())
                .append("\n\n**")
                .append(info.title())
                .append("** (")
                .append(Outcome.word(info.severity()))
                .append("). ")
                .append(info.finds())
                .append("\n\nWhy it matters: ")
                .append(info.matters())
                .append("\n");
        if (!info.parameters().isEmpty()) {
            page.append("\n| parameter | what it does | unit | usual |\n|---|---|---|---|\n");
            for (CheckInfo.Parameter each : info.parameters()) {
                page.append("| `")
                        .append(each.name())
                        .append("` | ")
                        .append(cell(each.says()))
                        .append(" | ")
                        .append(each.unit().isEmpty() ? "text" : cell(each.unit()))
                        .append(" | ")
                        .append(cell(each.usual()))
                        .append(" |\n");
            }
        }
        if (info.api() != CheckInfo.API) {
            page.append("\nWritten for version ").append(info.api()).append(" of checks.\n");
        }
    }

    /** Returns what a check needs, in words. */
    public static String needs(CheckInfo info) {
        return info.needs().isEmpty()
                ? "a device"
                : ListText.and(info.needs().stream().map(ChecksPage::word).toList());
    }

    private static String word(CheckInfo.Need need) {
        return switch (need) {
            case PLAN -> "a plan (`--plan` or `--free`)";
            case STOCK -> "the stock (`--stock`)";
            case DRIVES -> "the drives of the shop (`--drives`)";
            case JOB -> "a job (`--job`)";
            case TODAY -> "the day (`--today`)";
        };
    }

    /** Returns the unit of a parameter, in brackets. */
    public static String unit(CheckInfo.Parameter parameter) {
        return parameter.unit().isEmpty() || parameter.unit().equals("1")
                ? ""
                : " (" + parameter.unit() + ")";
    }

    private static String cell(String text) {
        return text.replace("|", "\\|").replace("\n", " ");
    }
}
