package org.rafterbook.exchange;

import java.util.List;

/** A page of headings, paragraphs and tables for print or for a browser; HTML that needs nothing beside itself. */
public final class PrintPage {

    /** A column of a table; numbers stand at the right. */
    public record Column(String head, boolean number) {

        public static Column text(String head) {
            return new Column(head, false);
        }

        public static Column number(String head) {
            return new Column(head, true);
        }
    }

    private static final String STYLE = """
            body { font: 10pt/1.35 sans-serif; color: #17242b; margin: 2em auto; max-width: 62em; padding: 0 1em; }
            h1 { font-size: 18pt; margin: 0; }
            h2 { font-size: 12pt; margin: 1.6em 0 .3em; }
            p { color: #435259; margin: .2em 0; }
            table { border-collapse: collapse; width: 100%; }
            th { text-align: left; font-weight: normal; color: #59686b; border-bottom: 1px solid #7b8983; }
            td, th { padding: .2em .6em .2em 0; vertical-align: top; }
            td { border-bottom: 1px solid #c6d0c5; }
            .number { text-align: right; font-variant-numeric: tabular-nums; white-space: nowrap; }
            @media print {
              body { margin: 0; max-width: none; }
              tr { break-inside: avoid; }
              h2 { break-after: avoid; }
            }
            """;

    private final StringBuilder html = new StringBuilder();

    public PrintPage(String title) {
        html.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<title>")
                .append(escaped(title))
                .append("</title>\n<style>\n")
                .append(STYLE)
                .append("</style>\n</head>\n<body>\n<h1>")
                .append(escaped(title))
                .append("</h1>\n");
    }

    public PrintPage paragraph(String words) {
        html.append("<p>").append(escaped(words)).append("</p>\n");
        return this;
    }

    /** A table under a heading; one without rows is left out. */
    public PrintPage table(String heading, List<Column> columns, List<List<String>> rows) {
        if (rows.isEmpty()) {
            return this;
        }
        html.append("<h2>").append(escaped(heading)).append("</h2>\n<table>\n<tr>");
        columns.forEach(column -> cell("th", column, column.head()));
        html.append("</tr>\n");
        for (List<String> row : rows) {
            html.append("<tr>");
            for (int i = 0; i < columns.size(); i++) {
                cell("td", columns.get(i), row.get(i));
            }
            html.append("</tr>\n");
        }
        html.append("</table>\n");
        return this;
    }

    private void cell(String tag, Column column, String text) {
        html.append('<').append(tag).append(column.number() ? " class=\"number\">" : ">");
        html.append(escaped(text)).append("</").append(tag).append('>');
    }

    /** The whole page. */
    public String html() {
        return html + "</body>\n</html>\n";
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
