"""What a paper says about itself to programs: XMP metadata, the only kind PDF/A-3 needs."""

import re
from dataclasses import dataclass
from datetime import datetime
from html import escape

_NOT_XML = re.compile("[^\t\n\r\x20-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")

_PACKET = """<x:xmpmeta xmlns:x="adobe:ns:meta/">
  <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"
    xmlns:dc="http://purl.org/dc/elements/1.1/"
    xmlns:xmp="http://ns.adobe.com/xap/1.0/"
    xmlns:pdf="http://ns.adobe.com/pdf/1.3/"
    xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/">
    <rdf:Description rdf:about="" xmp:CreatorTool="{creator}" xmp:CreateDate="{made}"
      xmp:ModifyDate="{made}" pdf:Keywords="{keywords}">
      <pdfaid:part>3</pdfaid:part>
      <pdfaid:conformance>U</pdfaid:conformance>
      <dc:title><rdf:Alt><rdf:li xml:lang="x-default">{title}</rdf:li></rdf:Alt></dc:title>
      <dc:description><rdf:Alt><rdf:li xml:lang="x-default">{subject}</rdf:li></rdf:Alt>
      </dc:description>
      <dc:creator><rdf:Seq><rdf:li>{author}</rdf:li></rdf:Seq></dc:creator>
      <dc:language><rdf:Bag><rdf:li>{language}</rdf:li></rdf:Bag></dc:language>
    </rdf:Description>
  </rdf:RDF>
</x:xmpmeta>"""


@dataclass(frozen=True, slots=True, kw_only=True)
class About:
    """Title, subject, author and the like.

    Attributes:
        title: Title of the paper.
        subject: What it says, in a sentence.
        author: Who answers for it.
        creator: The program.
        keywords: Identifiers to find it by.
        language: ISO 639-1 code.
        made: When; with its zone.
    """

    title: str
    subject: str
    author: str
    creator: str
    keywords: str
    language: str
    made: datetime


def packet(about: About) -> str:
    """The XMP packet, escaped."""
    texts = {
        name: escape(_NOT_XML.sub("\ufffd", getattr(about, name)))
        for name in ("title", "subject", "author", "creator", "keywords", "language")
    }
    return _PACKET.format(**texts, made=about.made.isoformat(timespec="seconds"))
