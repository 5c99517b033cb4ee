import type { Catalogue } from '../catalogue.ts';

/** Sources as beside the English words. */
export const cautionWords: Catalogue['cautions'] = {
  heading: 'Vorsicht',
  defer:
    'Dies sind allgemeine Hinweise. Die Vorschriften am Ort, der Hersteller der Knopfzelle und zugelassene Fachleute gehen ihnen vor.',
  items: [
    {
      title: 'Verschluckte Knopfzellen können töten',
      text:
        'Eine Lithiumzelle von 20 mm, die in der Speiseröhre steckt, verätzt sie binnen zwei Stunden, und auch eine leere schadet noch. Ist eine Zelle vielleicht verschluckt ' +
        'oder in Nase oder Ohr gesteckt worden, sofort in die Notaufnahme gehen und den Giftnotruf des Landes anrufen; nicht auf Anzeichen warten und ' +
        'kein Erbrechen auslösen. Zellen, lose oder in Karten, für kleine Kinder unerreichbar halten und kleinen Kindern nie eine Karte mit Zelle geben.',
    },
    {
      title: 'Die Zelle einschließen',
      text:
        'Das Zellenfach zukleben oder zunähen, sodass kein Kind es öffnen kann. Schaumklebeband allein ist kein gesichertes Fach. Was verkauft oder ' +
        'ausgegeben wird, muss unter Umständen Vorschriften für Knopfzellenfächer und Warnhinweise erfüllen, in den USA etwa 16 CFR Teil 1263 mit UL 4200A; erfragen, was am Ort gilt.',
    },
    {
      title: 'Eine kurzgeschlossene Zelle wird heiß',
      text:
        'Kupfer, das beide Seiten verbindet, macht die Zelle binnen einer Minute heiß; sie kann auslaufen oder abblasen. Sofort am Rand mit etwas, das nicht ' +
        'leitet, herausnehmen, im Freien auf Stein oder in Sand legen und nicht wieder verwenden. Zellen nie lose auf Band oder aufeinander legen, nie aufladen, erhitzen, zerschneiden oder durchstechen.',
    },
    {
      title: 'In der Post',
      text:
        'Lithiumzellen sind in der Post Gefahrgut. In Geräte eingebaute Zellen sind in kleiner Zahl oft erlaubt, lose nicht; das entscheidet der ' +
        'Postdienst, also vor dem Versand dort fragen. Eine isolierende Zuglasche zwischen Zelle und Leiterbahn stecken, damit die Karte unterwegs weder leuchten noch kurzschließen kann.',
    },
    {
      title: 'Augen',
      text: 'Nicht aus der Nähe in eine helle LED sehen, und keine UV-LEDs verwenden, wo Kinder hineinsehen können.',
    },
    {
      title: 'Klingen und Kanten',
      text: 'Folienkanten und Bastelmesser schneiden. Auf einer Unterlage von der Hand weg schneiden und Klingen von Kindern fernhalten.',
    },
    {
      title: 'Nur Knopfzellen',
      text:
        'Geprüft werden Karten, die eine Knopfzelle speist. Eine solche Schaltung nie an das Stromnetz, an ein Ladegerät oder an aufladbare Lithiumakkus anschließen; ' +
        'dergleichen zugelassenen Fachleuten überlassen.',
    },
  ],
};
