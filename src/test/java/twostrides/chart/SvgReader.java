package twostrides.chart;

import java.io.ByteArrayInputStream;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.xpath.XPathFactory;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Reads a picture back: what a browser or an image viewer would find in it. */
final class SvgReader {

  private final Element root;

  SvgReader(Picture picture) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
    root =
        factory
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(picture.svg())))
            .getDocumentElement();
  }

  Element root() {
    return root;
  }

  /** Every text drawn, in the order drawn. */
  List<String> texts() {
    return all("text").stream().map(Element::getTextContent).toList();
  }

  List<Element> all(String name) {
    NodeList found = root.getElementsByTagName(name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < found.getLength(); i++) {
      elements.add((Element) found.item(i));
    }
    return elements;
  }

  /** A property of an element, its own or its group's. */
  static String style(Element element, String property) {
    return element.hasAttribute(property)
        ? element.getAttribute(property)
        : ((Element) element.getParentNode()).getAttribute(property);
  }

  int count(String path) throws Exception {
    return ((Double)
            XPathFactory.newDefaultInstance()
                .newXPath()
                .evaluate("count(" + path + ")", root, javax.xml.xpath.XPathConstants.NUMBER))
        .intValue();
  }

  static java.awt.image.BufferedImage png(Picture picture) throws Exception {
    return ImageIO.read(new ByteArrayInputStream(picture.png().get()));
  }
}
