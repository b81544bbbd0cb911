<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE" sourcelanguage="en_GB">
<context>
    <name>Louverwright</name>
    <message>
        <source> (back)</source>
        <translation> (hinten)</translation>
    </message>
    <message>
        <source> (front)</source>
        <translation> (vorn)</translation>
    </message>
    <message>
        <source> and </source>
        <translation> und </translation>
    </message>
    <message>
        <source> or </source>
        <translation> oder </translation>
    </message>
    <message>
        <source>, or 0 ({auto})</source>
        <translation>, oder 0 ({auto})</translation>
    </message>
    <message>
        <source>, or give the {label} as measured first</source>
        <translation>, oder geben Sie zuerst {label} wie gemessen an</translation>
    </message>
    <message>
        <source>, which puts the pitch off by {error}</source>
        <translation>, wodurch die Neigung um {error} falsch wird</translation>
    </message>
    <message>
        <source>0.3 of the width; 150 mm and what soles and rail need at least</source>
        <translation>0,3 der Breite; mindestens 150 mm und was Schwellen und Riegel brauchen</translation>
    </message>
    <message>
        <source>0.6 of the width</source>
        <translation>0,6 der Breite</translation>
    </message>
    <message>
        <source>1 mm past the dados' ends, 10 mm at least</source>
        <translation>1 mm über die Enden der Nuten, mindestens 10 mm</translation>
    </message>
    <message>
        <source>1.2 m², 12 sq ft or 144 sq in</source>
        <translation>1.2 m², 12 sq ft oder 144 sq in</translation>
    </message>
    <message>
        <source>12.5 kg or 27 lb</source>
        <translation>12.5 kg oder 27 lb</translation>
    </message>
    <message>
        <source>13.6, by the lifting equation for a stage held before one</source>
        <translation>13,6, nach der Hebegleichung für einen Abschnitt, der vor dem Körper gehalten wird</translation>
    </message>
    <message>
        <source>33.7° or 8:12</source>
        <translation>33.7° oder 8:12</translation>
    </message>
    <message>
        <source>A density of “{density}” is not between {lightest:g} and {heaviest:g} kg/m³. Give it as a number.</source>
        <translation>Eine Dichte von „{density}“ liegt nicht zwischen {lightest:g} und {heaviest:g} kg/m³. Geben Sie sie als Zahl an.</translation>
    </message>
    <message>
        <source>A middle stile; automatic: where the clear width passes the slats' span.</source>
        <translation>Ein Mittelpfosten; automatisch: wo die lichte Breite die Spannweite der Lamellen überschreitet.</translation>
    </message>
    <message>
        <source>A moisture of “{moisture}” is not between 0 and {wettest:g} % of the dry weight. Give it as a number.</source>
        <translation>Eine Feuchte von „{moisture}“ liegt nicht zwischen 0 und {wettest:g} % des Trockengewichts. Geben Sie sie als Zahl an.</translation>
    </message>
    <message>
        <source>A note for the shop, printed on the part's sheet and in the cut list.</source>
        <translation>Eine Notiz für die Werkstatt, auf dem Blatt des Teils und in der Schnittliste gedruckt.</translation>
    </message>
    <message>
        <source>A part came out wrong</source>
        <translation>Ein Teil ist falsch geworden</translation>
    </message>
    <message>
        <source>A reading on each slope</source>
        <translation>Eine Ablesung auf jeder Dachfläche</translation>
    </message>
    <message>
        <source>A ridge of {ridge} usually takes {vents} vents.</source>
        <translation>Ein First von {ridge} erhält gewöhnlich {vents} Dachreiter.</translation>
    </message>
    <message>
        <source>A scenario is an object with parameters.</source>
        <translation>Ein Szenario ist ein Objekt mit Parametern.</translation>
    </message>
    <message>
        <source>A size is given for a piece that is lost: {told}. Give the size, or say that it is lost.</source>
        <translation>Für ein verlorenes Stück ist ein Maß angegeben: {told}. Geben Sie das Maß an, oder dass es verloren ist.</translation>
    </message>
    <message>
        <source>A stock list is an object with a list of items. See the shipped lists.</source>
        <translation>Eine Holzliste ist ein Objekt mit einer Liste von Einträgen. Siehe die mitgelieferten Listen.</translation>
    </message>
    <message>
        <source>A thickness of {thickness:g} mm is more than the width of {width:g} mm. Exchange them.</source>
        <translation>Eine Dicke von {thickness:g} mm ist mehr als die Breite von {width:g} mm. Vertauschen Sie beide.</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Air target</source>
        <translation>Verlangter Lüftungsquerschnitt</translation>
    </message>
    <message>
        <source>All pieces apart</source>
        <translation>Alle Stücke auseinander</translation>
    </message>
    <message>
        <source>Along the ridge</source>
        <translation>Längs des Firsts</translation>
    </message>
    <message>
        <source>An item is an object with {item_keys}.</source>
        <translation>Ein Eintrag ist ein Objekt mit {item_keys}.</translation>
    </message>
    <message>
        <source>An item needs a {key}.</source>
        <translation>Ein Eintrag braucht {key}.</translation>
    </message>
    <message>
        <source>Angle at the ridge</source>
        <translation>Winkel am First</translation>
    </message>
    <message>
        <source>Angles ({angles}) and rise over run ({lengths}) are both given, and they may disagree. Give one kind.</source>
        <translation>Winkel ({angles}) und Steigung ({lengths}) sind beide angegeben und können einander widersprechen. Geben Sie nur eine Art an.</translation>
    </message>
    <message>
        <source>Area of the opening in plan, without what is left standing; of one vent, and of several the least.</source>
        <translation>Fläche der Öffnung im Grundriss, ohne was darin stehen bleibt; eines Dachreiters, von mehreren die kleinste.</translation>
    </message>
    <message>
        <source>Area of the opening in the roof, level; ridge board and rafters that stay take from it.</source>
        <translation>Fläche der Öffnung im Dach, waagerecht; Firstholz und Sparren, die bleiben, gehen davon ab.</translation>
    </message>
    <message>
        <source>Area of the vent's roof to be covered.</source>
        <translation>Zu deckende Fläche des Reiterdachs.</translation>
    </message>
    <message>
        <source>As measured</source>
        <translation>Wie gemessen</translation>
    </message>
    <message>
        <source>Barge board</source>
        <translation>Ortgangbrett</translation>
    </message>
    <message>
        <source>Barn roof</source>
        <translation>Scheunendach</translation>
    </message>
    <message>
        <source>Base</source>
        <translation>Sockel</translation>
    </message>
    <message>
        <source>Base height</source>
        <translation>Sockelhöhe</translation>
    </message>
    <message>
        <source>Base weight</source>
        <translation>Gewicht des Sockels</translation>
    </message>
    <message>
        <source>Batten moisture</source>
        <translation>Leistenholz: Feuchte</translation>
    </message>
    <message>
        <source>Batten stock</source>
        <translation>Leistenholz</translation>
    </message>
    <message>
        <source>Batten thickness</source>
        <translation>Leistenholz: Dicke</translation>
    </message>
    <message>
        <source>Batten width</source>
        <translation>Leistenholz: Breite</translation>
    </message>
    <message>
        <source>Battens that hold the screen.</source>
        <translation>Leisten, die das Gitter halten.</translation>
    </message>
    <message>
        <source>Bed mould and soffit nailer</source>
        <translation>Unterleiste und Nagelholz der Untersicht</translation>
    </message>
    <message>
        <source>Board gap</source>
        <translation>Brettfuge</translation>
    </message>
    <message>
        <source>Bottom rail</source>
        <translation>Unterriegel</translation>
    </message>
    <message>
        <source>Bottom rail height</source>
        <translation>Höhe des Unterriegels</translation>
    </message>
    <message>
        <source>Bring all into view</source>
        <translation>Alles ins Bild holen</translation>
    </message>
    <message>
        <source>Bring what is chosen into view</source>
        <translation>Gewähltes ins Bild holen</translation>
    </message>
    <message>
        <source>Building width</source>
        <translation>Gebäudebreite</translation>
    </message>
    <message>
        <source>By the trade's rule a ridge of {ridge}, shared by {vents}, takes a vent {width} wide.</source>
        <translation>Nach der Handwerksregel erhält ein First von {ridge}, geteilt durch {vents}, einen {width} breiten Dachreiter.</translation>
    </message>
    <message>
        <source>Cap plate</source>
        <translation>Kopfrähm</translation>
    </message>
    <message>
        <source>Cap plates, laid flat.</source>
        <translation>Kopfrähme, flach verlegt.</translation>
    </message>
    <message>
        <source>Change the dimensions of the selected vent in a panel, with a picture of what they make.</source>
        <translation>Die Maße des gewählten Dachreiters in einem Fenster ändern, mit einem Bild dessen, was daraus wird.</translation>
    </message>
    <message>
        <source>Change the expression.</source>
        <translation>Ändern Sie den Ausdruck.</translation>
    </message>
    <message>
        <source>Choose a hip roof, or 4 sides.</source>
        <translation>Wählen Sie ein Walmdach oder 4 Seiten.</translation>
    </message>
    <message>
        <source>Choose a thicker post, or an even number of rafters a side.</source>
        <translation>Wählen Sie einen dickeren Kaiserstiel oder eine gerade Zahl von Sparren je Seite.</translation>
    </message>
    <message>
        <source>Choose a thicker post.</source>
        <translation>Wählen Sie einen dickeren Kaiserstiel.</translation>
    </message>
    <message>
        <source>Choose a thinner mast, or a thicker post.</source>
        <translation>Wählen Sie einen dünneren Mast oder einen dickeren Kaiserstiel.</translation>
    </message>
    <message>
        <source>Choose a thinner mast, or larger frame stock.</source>
        <translation>Wählen Sie einen dünneren Mast oder größeres Rahmenholz.</translation>
    </message>
    <message>
        <source>Choose narrower battens, or leave the screen out.</source>
        <translation>Wählen Sie schmalere Leisten, oder lassen Sie das Gitter weg.</translation>
    </message>
    <message>
        <source>Choose one of these.</source>
        <translation>Wählen Sie eine davon.</translation>
    </message>
    <message>
        <source>Choose one of: {names}.</source>
        <translation>Wählen Sie eines von: {names}.</translation>
    </message>
    <message>
        <source>Choose one of: {parts}.</source>
        <translation>Wählen Sie eines von: {parts}.</translation>
    </message>
    <message>
        <source>Choose other stock or a smaller vent.</source>
        <translation>Wählen Sie anderes Holz oder einen kleineren Dachreiter.</translation>
    </message>
    <message>
        <source>Choose stock of that form and size, or change the vent's {parameter} instead, for the layout is made from it.</source>
        <translation>Wählen Sie Holz dieser Form und Größe, oder ändern Sie stattdessen beim Dachreiter „{parameter}“, denn danach ist er ausgelegt.</translation>
    </message>
    <message>
        <source>Choose the other cladding, or other stock.</source>
        <translation>Wählen Sie die andere Verschalung oder anderes Holz.</translation>
    </message>
    <message>
        <source>Choose the report as it was written.</source>
        <translation>Wählen Sie den Bericht, wie er geschrieben wurde.</translation>
    </message>
    <message>
        <source>Choose which sets of papers to write to a folder, such as the cut report, the lift plan or the checks.</source>
        <translation>Wählen, welche Papiere in einen Ordner geschrieben werden, etwa Schnittbericht, Hebeplan oder Prüfungen.</translation>
    </message>
    <message>
        <source>Choose wider corner board stock, or a narrower face.</source>
        <translation>Wählen Sie breiteres Holz für die Eckbretter oder eine schmalere Ansicht.</translation>
    </message>
    <message>
        <source>Choose wider fascia stock, or a narrower overhang.</source>
        <translation>Wählen Sie breiteres Holz für die Stirnbretter oder einen schmaleren Überstand.</translation>
    </message>
    <message>
        <source>Choose wider frame stock, or a narrower post face.</source>
        <translation>Wählen Sie breiteres Rahmenholz oder eine schmalere Pfostenansicht.</translation>
    </message>
    <message>
        <source>Choose wider frame stock.</source>
        <translation>Wählen Sie breiteres Rahmenholz.</translation>
    </message>
    <message>
        <source>Choose wider plate stock, or thinner trim.</source>
        <translation>Wählen Sie breiteres Holz für das Rähm oder dünnere Deckbretter.</translation>
    </message>
    <message>
        <source>Choose wider stock, or make the flare shorter or steeper.</source>
        <translation>Wählen Sie breiteres Holz, oder machen Sie den Dachknick kürzer oder steiler.</translation>
    </message>
    <message>
        <source>Choose wider stock, or make the rafters shallower or the roof flatter.</source>
        <translation>Wählen Sie breiteres Holz, oder machen Sie die Sparren niedriger oder das Dach flacher.</translation>
    </message>
    <message>
        <source>Choose {choice}.</source>
        <translation>Wählen Sie {choice}.</translation>
    </message>
    <message>
        <source>Choose {other} as {stock}, or measure again.</source>
        <translation>Wählen Sie {other} als {stock}, oder messen Sie noch einmal.</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Wählen …</translation>
    </message>
    <message>
        <source>Cladding</source>
        <translation>Verschalung</translation>
    </message>
    <message>
        <source>Cladding clearance</source>
        <translation>Abstand der Verschalung</translation>
    </message>
    <message>
        <source>Cladding moisture</source>
        <translation>Holz der Verschalung: Feuchte</translation>
    </message>
    <message>
        <source>Cladding stock</source>
        <translation>Holz der Verschalung</translation>
    </message>
    <message>
        <source>Cladding thickness</source>
        <translation>Holz der Verschalung: Dicke</translation>
    </message>
    <message>
        <source>Cladding width</source>
        <translation>Holz der Verschalung: Breite</translation>
    </message>
    <message>
        <source>Cladding: a sheet, or a board for board cladding.</source>
        <translation>Verschalung: eine Platte, oder ein Brett für Bretterschalung.</translation>
    </message>
    <message>
        <source>Clear area inside the base frame and the panels.</source>
        <translation>Lichte Fläche innerhalb von Sockelrahmen und Feldern.</translation>
    </message>
    <message>
        <source>Clear gap between slats, square to them.</source>
        <translation>Lichte Fuge zwischen den Lamellen, rechtwinklig zu ihnen.</translation>
    </message>
    <message>
        <source>Clear opening {opening}, louvers {louvers}: {verdict}</source>
        <translation>Lichte Öffnung {opening}, Lamellen {louvers}: {verdict}</translation>
    </message>
    <message>
        <source>Clearances</source>
        <translation>Spielräume</translation>
    </message>
    <message>
        <source>Coats of paint over the primer.</source>
        <translation>Deckanstriche auf der Grundierung.</translation>
    </message>
    <message>
        <source>Coats of primer.</source>
        <translation>Anstriche mit Grundierung.</translation>
    </message>
    <message>
        <source>Common rafter</source>
        <translation>Normalsparren</translation>
    </message>
    <message>
        <source>Compare with an earlier report</source>
        <translation>Mit einem früheren Bericht vergleichen</translation>
    </message>
    <message>
        <source>Corner</source>
        <translation>Ecke</translation>
    </message>
    <message>
        <source>Corner board</source>
        <translation>Eckbrett</translation>
    </message>
    <message>
        <source>Corner board face</source>
        <translation>Ansicht der Eckbretter</translation>
    </message>
    <message>
        <source>Corner board moisture</source>
        <translation>Holz der Eckbretter: Feuchte</translation>
    </message>
    <message>
        <source>Corner board stock</source>
        <translation>Holz der Eckbretter</translation>
    </message>
    <message>
        <source>Corner board thickness</source>
        <translation>Holz der Eckbretter: Dicke</translation>
    </message>
    <message>
        <source>Corner board width</source>
        <translation>Holz der Eckbretter: Breite</translation>
    </message>
    <message>
        <source>Corner boards of the base.</source>
        <translation>Eckbretter des Sockels.</translation>
    </message>
    <message>
        <source>Corner gusset of the cap plate</source>
        <translation>Ecklasche des Kopfrähms</translation>
    </message>
    <message>
        <source>Count is {count}: one vent has {most} of {mark}, so it must be 1 to {most}, or 0 for all. Give the number of pieces that came out wrong.</source>
        <translation>Die Anzahl ist {count}: ein Dachreiter hat {most} von {mark}, also muss sie 1 bis {most} sein, oder 0 für alle. Geben Sie an, wie viele Stücke falsch geworden sind.</translation>
    </message>
    <message>
        <source>Course exposure</source>
        <translation>Sichtbare Reihenhöhe</translation>
    </message>
    <message>
        <source>Cut already, not to change</source>
        <translation>Schon gesägt, nicht zu ändern</translation>
    </message>
    <message>
        <source>Cut list in a spreadsheet</source>
        <translation>Schnittliste in einer Tabelle</translation>
    </message>
    <message>
        <source>Cut list of {vent}</source>
        <translation>Schnittliste von {vent}</translation>
    </message>
    <message>
        <source>Cut report</source>
        <translation>Schnittbericht</translation>
    </message>
    <message>
        <source>Cut the rough opening for the selected vent into the roof that it stands on; the roof itself is kept, and hidden.</source>
        <translation>Die Rohöffnung für den gewählten Dachreiter in das Dach schneiden, auf dem er steht; das Dach selbst bleibt erhalten und wird ausgeblendet.</translation>
    </message>
    <message>
        <source>Cut through the roof, which is drawn without a thickness.</source>
        <translation>Durch das Dach geschnitten, das ohne Dicke gezeichnet ist.</translation>
    </message>
    <message>
        <source>Cut through the roof, which is {depth} thick, plumb.</source>
        <translation>Durch das Dach geschnitten, das {depth} dick ist, lotrecht gemessen.</translation>
    </message>
    <message>
        <source>Cut {depth} deep, plumb, as Depth says.</source>
        <translation>{depth} tief geschnitten, lotrecht, wie Depth sagt.</translation>
    </message>
    <message>
        <source>Dado depth</source>
        <translation>Nuttiefe</translation>
    </message>
    <message>
        <source>Dado fit</source>
        <translation>Spiel der Nut</translation>
    </message>
    <message>
        <source>Defect allowance</source>
        <translation>Zuschlag für Holzfehler</translation>
    </message>
    <message>
        <source>Depth of a louver panel, which is the width of its stiles.</source>
        <translation>Tiefe eines Lamellenfelds, gleich der Breite seiner Wangen.</translation>
    </message>
    <message>
        <source>Depth of the dados that take the slats.</source>
        <translation>Tiefe der Nuten, in denen die Lamellen sitzen.</translation>
    </message>
    <message>
        <source>Design wind speed of the place in m/s, as the code there gives it (three-second gust).</source>
        <translation>Bemessungswindgeschwindigkeit des Ortes in m/s, wie die dortige Norm sie angibt (Drei-Sekunden-Böe).</translation>
    </message>
    <message>
        <source>Diameter of the mast through the roof for a vane or finial; 0 for none.</source>
        <translation>Durchmesser des Masts durch das Dach für eine Wetterfahne oder Dachspitze; 0 für keinen.</translation>
    </message>
    <message>
        <source>Different marks.</source>
        <translation>Verschiedene Zeichen.</translation>
    </message>
    <message>
        <source>Direction of the roof sheathing's face grain.</source>
        <translation>Richtung der Decklagenfaser der Dachschalung.</translation>
    </message>
    <message>
        <source>Distance of the roof opening's edge from the inside of the legs.</source>
        <translation>Abstand des Rands der Dachöffnung von der Innenseite der Stiele.</translation>
    </message>
    <message>
        <source>Double-click a page in the tree to open it. Your own additions to a page are kept, and so is where you move a picture. Run this command again when the vent has changed.</source>
        <translation>Doppelklicken Sie eine Seite im Baum, um sie zu öffnen. Eigene Ergänzungen auf einer Seite bleiben erhalten, ebenso wohin Sie ein Bild verschieben. Führen Sie diesen Befehl erneut aus, wenn sich der Dachreiter geändert hat.</translation>
    </message>
    <message>
        <source>Draw the vent on TechDraw pages: general arrangement, a sheet a stage, sheets of parts; run again, the pages follow the model and keep what you added.</source>
        <translation>Zeichnet den Dachreiter auf TechDraw-Seiten: Übersicht, ein Blatt je Stufe, Blätter der Teile; erneut ausgeführt, folgen die Seiten dem Modell und behalten, was Sie ergänzt haben.</translation>
    </message>
    <message>
        <source>Drip ring board</source>
        <translation>Tropfkranzbrett</translation>
    </message>
    <message>
        <source>Drip ring.</source>
        <translation>Tropfkranz.</translation>
    </message>
    <message>
        <source>Driver length</source>
        <translation>Länge des Schraubers</translation>
    </message>
    <message>
        <source>Drop left back</source>
        <translation>Lotmaß links hinten</translation>
    </message>
    <message>
        <source>Drop left front</source>
        <translation>Lotmaß links vorn</translation>
    </message>
    <message>
        <source>Drop right back</source>
        <translation>Lotmaß rechts hinten</translation>
    </message>
    <message>
        <source>Drop right front</source>
        <translation>Lotmaß rechts vorn</translation>
    </message>
    <message>
        <source>Eave sheathing</source>
        <translation>Schalung an der Traufe</translation>
    </message>
    <message>
        <source>Edit vent</source>
        <translation>Dachreiter ändern</translation>
    </message>
    <message>
        <source>Empty: {auto}.</source>
        <translation>Leer: {auto}.</translation>
    </message>
    <message>
        <source>End distance</source>
        <translation>Endabstand</translation>
    </message>
    <message>
        <source>End pitch</source>
        <translation>Neigung der Walmflächen</translation>
    </message>
    <message>
        <source>End trim</source>
        <translation>Endenabschnitt</translation>
    </message>
    <message>
        <source>Enter the expression {value} once; then it can be taken away again and a number of {unit} be entered.</source>
        <translation>Geben Sie einmal den Ausdruck {value} ein; dann kann er wieder entfernt und eine Zahl in {unit} eingegeben werden.</translation>
    </message>
    <message>
        <source>Exact numbers of a report</source>
        <translation>Genaue Zahlen eines Berichts</translation>
    </message>
    <message>
        <source>Exact numbers of the earlier report (cuts.json)</source>
        <translation>Genaue Zahlen des früheren Berichts (cuts.json)</translation>
    </message>
    <message>
        <source>Faces, edges and whole objects are picked together. Pick two slopes, or the ridge alone, or one whole roof.</source>
        <translation>Flächen, Kanten und ganze Objekte sind zusammen gewählt. Wählen Sie zwei Dachflächen, nur den First oder ein ganzes Dach.</translation>
    </message>
    <message>
        <source>Facing</source>
        <translation>Ausrichtung</translation>
    </message>
    <message>
        <source>Fascia</source>
        <translation>Stirnbrett</translation>
    </message>
    <message>
        <source>Fascia and bed mould.</source>
        <translation>Stirnbrett und Unterleiste.</translation>
    </message>
    <message>
        <source>Fascia moisture</source>
        <translation>Holz der Stirnbretter: Feuchte</translation>
    </message>
    <message>
        <source>Fascia stock</source>
        <translation>Holz der Stirnbretter</translation>
    </message>
    <message>
        <source>Fascia thickness</source>
        <translation>Holz der Stirnbretter: Dicke</translation>
    </message>
    <message>
        <source>Fascia width</source>
        <translation>Holz der Stirnbretter: Breite</translation>
    </message>
    <message>
        <source>Flare pitch</source>
        <translation>Neigung unter dem Dachknick</translation>
    </message>
    <message>
        <source>Flare reach</source>
        <translation>Reichweite des Dachknicks</translation>
    </message>
    <message>
        <source>Floor area</source>
        <translation>Bodenfläche</translation>
    </message>
    <message>
        <source>Floor ratio</source>
        <translation>Verhältnis zur Bodenfläche</translation>
    </message>
    <message>
        <source>Floor that the vents together air, in square metres.</source>
        <translation>Bodenfläche, die die Dachreiter zusammen lüften, in Quadratmetern.</translation>
    </message>
    <message>
        <source>Folder for the cut report</source>
        <translation>Ordner für den Schnittbericht</translation>
    </message>
    <message>
        <source>Folder for the papers</source>
        <translation>Ordner für die Papiere</translation>
    </message>
    <message>
        <source>Form of the vent's roof: hipped on every side; hipped with a kicked eave, two pitches a face; or two faces that end in gables.</source>
        <translation>Form des Reiterdachs: auf jeder Seite abgewalmt; abgewalmt mit geknickter Traufe, zwei Neigungen je Fläche; oder zwei Flächen mit Giebeln.</translation>
    </message>
    <message>
        <source>Frame</source>
        <translation>Rahmen</translation>
    </message>
    <message>
        <source>Frame moisture</source>
        <translation>Rahmenholz: Feuchte</translation>
    </message>
    <message>
        <source>Frame stock</source>
        <translation>Rahmenholz</translation>
    </message>
    <message>
        <source>Frame thickness</source>
        <translation>Rahmenholz: Dicke</translation>
    </message>
    <message>
        <source>Frame width</source>
        <translation>Rahmenholz: Breite</translation>
    </message>
    <message>
        <source>Free area</source>
        <translation>Freier Querschnitt</translation>
    </message>
    <message>
        <source>Free area of one vent's louvers.</source>
        <translation>Freier Querschnitt der Lamellen eines Dachreiters.</translation>
    </message>
    <message>
        <source>Free area wanted from this vent; 0 where no target is set.</source>
        <translation>Verlangter freier Querschnitt dieses Dachreiters; 0, wo keiner verlangt ist.</translation>
    </message>
    <message>
        <source>Frieze</source>
        <translation>Fries</translation>
    </message>
    <message>
        <source>From axis to axis of the vents along the ridge; 0 for one vent.</source>
        <translation>Von Achse zu Achse der Dachreiter längs des Firsts; 0 bei einem Dachreiter.</translation>
    </message>
    <message>
        <source>From slat to slat, plumb.</source>
        <translation>Von Lamelle zu Lamelle, lotrecht.</translation>
    </message>
    <message>
        <source>From the back end</source>
        <translation>Vom hinteren Ende</translation>
    </message>
    <message>
        <source>From the front end</source>
        <translation>Vom vorderen Ende</translation>
    </message>
    <message>
        <source>From the gables' cladding to the back of the barge boards, level.</source>
        <translation>Von der Giebelverschalung bis zur Rückseite der Ortgangbretter, waagerecht.</translation>
    </message>
    <message>
        <source>From the middle</source>
        <translation>Von der Mitte</translation>
    </message>
    <message>
        <source>From the plate's edge to the rafters' tails, level.</source>
        <translation>Von der Außenkante des Rähms bis zu den Sparrenköpfen, waagerecht.</translation>
    </message>
    <message>
        <source>From the rafters' tails up to the break of a flared roof, level.</source>
        <translation>Von den Sparrenköpfen bis hinauf zum Dachknick, waagerecht.</translation>
    </message>
    <message>
        <source>From the ridge to the roof's peak.</source>
        <translation>Vom First bis zur Dachspitze.</translation>
    </message>
    <message>
        <source>Gable end</source>
        <translation>Giebel</translation>
    </message>
    <message>
        <source>Gable ridge</source>
        <translation>First des Satteldachs</translation>
    </message>
    <message>
        <source>Gable-end apron</source>
        <translation>Giebelschürze</translation>
    </message>
    <message>
        <source>Gable-end cladding</source>
        <translation>Giebelverschalung</translation>
    </message>
    <message>
        <source>Gable-end peak board</source>
        <translation>Giebelspitzenbrett</translation>
    </message>
    <message>
        <source>Gable-end screen</source>
        <translation>Giebelgitter</translation>
    </message>
    <message>
        <source>Gable-end screen batten</source>
        <translation>Gitterleiste am Giebel</translation>
    </message>
    <message>
        <source>Gable-end sill</source>
        <translation>Sohlbank am Giebel</translation>
    </message>
    <message>
        <source>Gable-end sill bed</source>
        <translation>Sohlbankunterlage am Giebel</translation>
    </message>
    <message>
        <source>Gable-end slat</source>
        <translation>Giebellamelle</translation>
    </message>
    <message>
        <source>Gable-end stile</source>
        <translation>Giebelwange</translation>
    </message>
    <message>
        <source>Gap all round where the louver stage drops inside the cladding.</source>
        <translation>Spielraum ringsum, wo der Lamellenabschnitt in der Verschalung steckt.</translation>
    </message>
    <message>
        <source>Gap between a louver panel and the posts and rail around it.</source>
        <translation>Spielraum zwischen einem Lamellenfeld und den Pfosten und Riegeln um es.</translation>
    </message>
    <message>
        <source>Gap between cladding boards.</source>
        <translation>Fuge zwischen den Brettern der Verschalung.</translation>
    </message>
    <message>
        <source>Gap between the drip ring and the cladding and corner boards under it.</source>
        <translation>Spielraum zwischen dem Tropfkranz und Verschalung und Eckbrettern darunter.</translation>
    </message>
    <message>
        <source>Give a number, with a point for decimals, and what it is for: /m, /ft or each, or a length: 8 ft = 4.20.</source>
        <translation>Geben Sie eine Zahl an, mit Punkt vor den Dezimalen, und wofür sie gilt: /m, /ft oder each, oder eine Länge: 8 ft = 4.20.</translation>
    </message>
    <message>
        <source>Give a number, with a point for decimals, and what it is for: /m, /ft or each.</source>
        <translation type="vanished">Geben Sie eine Zahl mit Dezimalpunkt an und wofür sie gilt: /m, /ft oder each.</translation>
    </message>
    <message>
        <source>Give all four, or set all four to 0.</source>
        <translation>Geben Sie alle vier an, oder setzen Sie alle vier auf 0.</translation>
    </message>
    <message>
        <source>Give figures and a unit: 1200 mm, 3 1/2 ft.</source>
        <translation>Geben Sie Ziffern und eine Einheit an: 1200 mm, 3 1/2 ft.</translation>
    </message>
    <message>
        <source>Give lengths above 0 mm and at most {longest:g} mm.</source>
        <translation>Geben Sie Längen über 0 mm und höchstens {longest:g} mm an.</translation>
    </message>
    <message>
        <source>Give the length of unbroken ridge, or make one vent.</source>
        <translation>Geben Sie die Länge des ununterbrochenen Firsts an, oder machen Sie nur einen Dachreiter.</translation>
    </message>
    <message>
        <source>Give the real size of a piece that was cut wrong, or say that it is lost: see whether it may stay, what packing fills the gap, what to take off, or which parameter lets the vent follow it.</source>
        <translation>Das wirkliche Maß eines falsch gesägten Stücks angeben, oder dass es verloren ist: sehen, ob es bleiben darf, welche Beilage die Fuge füllt, was wegzunehmen ist oder mit welchem Parameter der Dachreiter ihm folgt.</translation>
    </message>
    <message>
        <source>Give the stock, a colon and the lengths: 2x4: 1200, 900; 1x6: 2 m.</source>
        <translation>Geben Sie das Holz, einen Doppelpunkt und die Längen an: 2x4: 1200, 900; 1x6: 2 m.</translation>
    </message>
    <message>
        <source>Give the stock, a colon and the price: 2x4: 2.10/m; plywood 1/2: 38 each.</source>
        <translation>Geben Sie das Holz, einen Doppelpunkt und den Preis an: 2x4: 2.10/m; plywood 1/2: 38 each.</translation>
    </message>
    <message>
        <source>Give the width, or another number of vents.</source>
        <translation>Geben Sie die Breite an, oder eine andere Zahl von Dachreitern.</translation>
    </message>
    <message>
        <source>Give the width, or the ridge length.</source>
        <translation>Geben Sie die Breite oder die Firstlänge an.</translation>
    </message>
    <message>
        <source>Go there</source>
        <translation>Dorthin</translation>
    </message>
    <message>
        <source>Head rail</source>
        <translation>Kopfholz</translation>
    </message>
    <message>
        <source>Heel height</source>
        <translation>Obholz</translation>
    </message>
    <message>
        <source>Height above the ridge of the base's second rail on the gable sides (its lower edge).</source>
        <translation>Höhe des zweiten Riegels der Giebelseiten des Sockels über dem First (seine Unterkante).</translation>
    </message>
    <message>
        <source>Height of the base's top above the ridge.</source>
        <translation>Höhe der Oberkante des Sockels über dem First.</translation>
    </message>
    <message>
        <source>Height of the centre of gravity above the ridge.</source>
        <translation>Höhe des Schwerpunkts über dem First.</translation>
    </message>
    <message>
        <source>Height of the louver stage's frame.</source>
        <translation>Höhe des Rahmens des Lamellenabschnitts.</translation>
    </message>
    <message>
        <source>Hip rafter</source>
        <translation>Gratsparren</translation>
    </message>
    <message>
        <source>Hip rafter slope</source>
        <translation>Neigung der Gratsparren</translation>
    </message>
    <message>
        <source>Hip slope</source>
        <translation>Neigung der Grate</translation>
    </message>
    <message>
        <source>Hips, jacks and commons.</source>
        <translation>Gratsparren, Schifter und Normalsparren.</translation>
    </message>
    <message>
        <source>How deep the opening is cut under the roof's surface, plumb. 0: through the roof's own thickness, 600 mm at most.</source>
        <translation>Wie tief die Öffnung unter die Dachoberfläche geschnitten wird, lotrecht. 0: durch die Dicke des Dachs, höchstens 600 mm.</translation>
    </message>
    <message>
        <source>How deep the opening is cut, plumb.</source>
        <translation>Wie tief die Öffnung geschnitten ist, lotrecht.</translation>
    </message>
    <message>
        <source>How far legs and soles sit below the roof's finished surface, square to the slope: 0 on the covering, the covering's thickness on the deck.</source>
        <translation>Wie tief Stiele und Schwellen unter der fertigen Dachoberfläche sitzen, rechtwinklig zur Dachfläche: 0 auf der Deckung, die Dicke der Deckung auf der Schalung.</translation>
    </message>
    <message>
        <source>How far slats overlap at the rain angle.</source>
        <translation>Wie weit die Lamellen einander beim Regenwinkel überdecken.</translation>
    </message>
    <message>
        <source>How far the barn's ridge cap stands above its covering, plumb; soles and cladding are relieved over it. 0 if the cap is taken away under the vent.</source>
        <translation>Wie hoch die Firsthaube der Scheune über ihrer Deckung steht, lotrecht; Schwellen und Verschalung sind darüber ausgeklinkt. 0, wenn die Haube unter dem Dachreiter entfernt wird.</translation>
    </message>
    <message>
        <source>How far the drip ring reaches beyond the corner boards.</source>
        <translation>Wie weit der Tropfkranz über die Eckbretter vorsteht.</translation>
    </message>
    <message>
        <source>How far the measured pitch may be off; the report says what it opens up at the foot.</source>
        <translation>Um wie viel die gemessene Neigung falsch sein kann; der Bericht sagt, wie weit das am Fuß klafft.</translation>
    </message>
    <message>
        <source>How far the roof lies lower at the vent's +X end than at its −X end, both slopes' mean; negative where the −X end is lower.</source>
        <translation>Um wie viel das Dach am +X-Ende des Dachreiters tiefer liegt als an seinem −X-Ende, im Mittel beider Dachflächen; negativ, wo das −X-Ende tiefer liegt.</translation>
    </message>
    <message>
        <source>How far the vent's axis stands to the left of the ridge (to the right if negative).</source>
        <translation>Wie weit die Achse des Dachreiters links vom First steht (rechts, wenn negativ).</translation>
    </message>
    <message>
        <source>How far trim laps over the stiles and the frieze over the head rail.</source>
        <translation>Wie weit die Deckbretter über die Wangen und der Fries über das Kopfholz greifen.</translation>
    </message>
    <message>
        <source>How far your saw's blade tilts from upright.</source>
        <translation>Wie weit sich das Blatt Ihrer Säge aus dem Lot neigen lässt.</translation>
    </message>
    <message>
        <source>How far your saw's gauge swings from square.</source>
        <translation>Wie weit sich der Anschlag Ihrer Säge aus dem rechten Winkel schwenken lässt.</translation>
    </message>
    <message>
        <source>How many equal vents share the ridge.</source>
        <translation>Wie viele gleiche Dachreiter sich den First teilen.</translation>
    </message>
    <message>
        <source>How many pieces the vent has; 0 if it has none.</source>
        <translation>Wie viele Stücke der Dachreiter hat; 0, wenn keines.</translation>
    </message>
    <message>
        <source>How much further the left slope drops at one end than at the other.</source>
        <translation>Um wie viel die linke Dachfläche an einem Ende mehr fällt als am anderen.</translation>
    </message>
    <message>
        <source>How much further the right slope drops at one end than at the other.</source>
        <translation>Um wie viel die rechte Dachfläche an einem Ende mehr fällt als am anderen.</translation>
    </message>
    <message>
        <source>How much of a new stick you reckon lost to knots, wane and splits, in percent of its length.</source>
        <translation>Wie viel einer neuen Stange Sie durch Äste, Baumkante und Risse verloren geben, in Prozent ihrer Länge.</translation>
    </message>
    <message>
        <source>How much of each course of the barn's shingles or tiles shows, up the slope; there is one step flashing for each.</source>
        <translation>Wie viel von jeder Reihe der Schindeln oder Ziegel der Scheune in der Dachneigung sichtbar ist; zu jeder gehört ein Stufenblech.</translation>
    </message>
    <message>
        <source>How much wider a dado is than the slat is thick.</source>
        <translation>Um wie viel eine Nut breiter ist, als die Lamelle dick ist.</translation>
    </message>
    <message>
        <source>How planks turn a corner on a square plan: the gable side runs through and the eave side stops against it, or both are mitred. Other plans are always mitred.</source>
        <translation>Wie Bohlen bei quadratischem Grundriss um eine Ecke gehen: die Giebelseite läuft durch und die Traufseite stößt dagegen, oder beide sind auf Gehrung. Andere Grundrisse sind immer auf Gehrung.</translation>
    </message>
    <message>
        <source>How the opening was cut.</source>
        <translation>Wie die Öffnung geschnitten wurde.</translation>
    </message>
    <message>
        <source>How the pitch was measured, as it is to stand in the report.</source>
        <translation>Wie die Neigung gemessen wurde, so wie es im Bericht stehen soll.</translation>
    </message>
    <message>
        <source>In kg.</source>
        <translation>In Kilogramm.</translation>
    </message>
    <message>
        <source>Inch fraction</source>
        <translation>Zollbruch</translation>
    </message>
    <message>
        <source>Inches are rounded to one part in so many on the report.</source>
        <translation>Zoll werden im Bericht auf einen so großen Bruchteil gerundet.</translation>
    </message>
    <message>
        <source>Included angle at the ridge {included} and {side} slope {slope}, each ± {reading_error}: left {left}, right {right}, the slope not read ± {error}.</source>
        <translation>Winkel am First {included} und Neigung {side} {slope}, je ± {reading_error}: links {left}, rechts {right}, die nicht abgelesene Dachfläche ± {error}.</translation>
    </message>
    <message>
        <source>Included angle at the ridge {included} ± {reading_error}: both slopes {pitch}, each ± {error}.</source>
        <translation>Winkel am First {included} ± {reading_error}: beide Dachflächen {pitch}, je ± {error}.</translation>
    </message>
    <message>
        <source>It has {count} lengths, and at most {most} are read. Leave out what you do not use.</source>
        <translation>Er hat {count} Längen, und höchstens {most} werden gelesen. Lassen Sie weg, was Sie nicht brauchen.</translation>
    </message>
    <message>
        <source>It holds no exact numbers of a report. Choose a cuts.json.</source>
        <translation>Sie enthält keine genauen Zahlen eines Berichts. Wählen Sie eine cuts.json.</translation>
    </message>
    <message>
        <source>It is not JSON: {error}.</source>
        <translation>Das ist kein JSON: {error}.</translation>
    </message>
    <message>
        <source>It is not a parameter of this version.</source>
        <translation>Das ist kein Parameter dieser Version.</translation>
    </message>
    <message>
        <source>It is not an item of stock.</source>
        <translation>Das ist kein Eintrag einer Holzliste.</translation>
    </message>
    <message>
        <source>It must be a list with at least one length that the item is sold in.</source>
        <translation>Es muss eine Liste mit mindestens einer Länge sein, in der das Holz verkauft wird.</translation>
    </message>
    <message>
        <source>It must be an object of names and values.</source>
        <translation>Es muss ein Objekt aus Namen und Werten sein.</translation>
    </message>
    <message>
        <source>It must be an object of uses and names of items.</source>
        <translation>Es muss ein Objekt aus Verwendungen und Namen von Einträgen sein.</translation>
    </message>
    <message>
        <source>It must be “{format}”, version {format_version}: a cuts.json of a report.</source>
        <translation>Es muss „{format}“, Version {format_version}, sein: eine cuts.json eines Berichts.</translation>
    </message>
    <message>
        <source>It was written by another version of Louverwright, which lays out the same parameters otherwise. Compare with the version that wrote it, or write that report again.</source>
        <translation>Er wurde von einer anderen Version von Louverwright geschrieben, die dieselben Parameter anders auslegt. Vergleichen Sie mit der Version, die ihn geschrieben hat, oder schreiben Sie jenen Bericht neu.</translation>
    </message>
    <message>
        <source>Jack and common rafters on each side, between the hips; an odd number has a common at mid-side. Under a gable roof those between the gables' own. −1: automatic, by the sheathing's span.</source>
        <translation>Schifter und Normalsparren auf jeder Seite zwischen den Gratsparren; bei ungerader Zahl steht ein Normalsparren in der Mitte der Seite. Unter einem Satteldach die zwischen den Giebelsparren. −1: automatisch, nach der Spannweite der Schalung.</translation>
    </message>
    <message>
        <source>Jack rafter</source>
        <translation>Schifter</translation>
    </message>
    <message>
        <source>Jacks and commons on each side with an eave; of a rectangle on its long sides.</source>
        <translation>Schifter und Normalsparren auf jeder Seite mit Traufe; beim Rechteck auf seinen langen Seiten.</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>Join it on a rafter or choose a smaller vent or a larger sheet.</source>
        <translation>Stoßen Sie sie auf einem Sparren, oder wählen Sie einen kleineren Dachreiter oder eine größere Platte.</translation>
    </message>
    <message>
        <source>Joint to be caulked between trim and drip ring.</source>
        <translation>Abzudichtende Fuge zwischen Deckbrettern und Tropfkranz.</translation>
    </message>
    <message>
        <source>King post</source>
        <translation>Kaiserstiel</translation>
    </message>
    <message>
        <source>King post moisture</source>
        <translation>Holz des Kaiserstiels: Feuchte</translation>
    </message>
    <message>
        <source>King post stock</source>
        <translation>Holz des Kaiserstiels</translation>
    </message>
    <message>
        <source>King post thickness</source>
        <translation>Holz des Kaiserstiels: Dicke</translation>
    </message>
    <message>
        <source>King post width</source>
        <translation>Holz des Kaiserstiels: Breite</translation>
    </message>
    <message>
        <source>King post, square.</source>
        <translation>Kaiserstiel, quadratisch.</translation>
    </message>
    <message>
        <source>Large drawings</source>
        <translation>Große Zeichnungen</translation>
    </message>
    <message>
        <source>Largest mitre at which your saw's blade still tilts fully; beyond it the tilt falls to nothing at the largest mitre.</source>
        <translation>Größte Gehrung, bei der sich das Blatt Ihrer Säge noch ganz neigen lässt; darüber nimmt die Neigung bis zur größten Gehrung auf null ab.</translation>
    </message>
    <message>
        <source>Leave one of them.</source>
        <translation>Lassen Sie einen davon stehen.</translation>
    </message>
    <message>
        <source>Left rise</source>
        <translation>Höhe links</translation>
    </message>
    <message>
        <source>Left run</source>
        <translation>Grundmaß links</translation>
    </message>
    <message>
        <source>Left slope</source>
        <translation>Dachfläche links</translation>
    </message>
    <message>
        <source>Leg</source>
        <translation>Stiel</translation>
    </message>
    <message>
        <source>Legs, posts, rails, soles, mullions and bearer.</source>
        <translation>Stiele, Pfosten, Riegel, Schwellen, Mittelpfosten und Träger.</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Length of a rectangular vent over the cladding, along the ridge (with a corner to the ridge, along its first side's direction); 1:2 of the width at most.</source>
        <translation>Länge eines rechteckigen Dachreiters über die Verschalung, längs des Firsts (mit einer Ecke zum First: in der Richtung seiner ersten Seite); höchstens 1:2 zur Breite.</translation>
    </message>
    <message>
        <source>Length of all eaves together, verges apart.</source>
        <translation>Länge aller Traufen zusammen, ohne Ortgänge.</translation>
    </message>
    <message>
        <source>Length of all verges of a gable roof together, up the slope.</source>
        <translation>Länge aller Ortgänge eines Satteldachs zusammen, die Dachfläche hinauf.</translation>
    </message>
    <message>
        <source>Length of one hip of the covering, eave to peak; 0 for a gable roof.</source>
        <translation>Länge eines Grats der Deckung, von der Traufe zur Spitze; 0 beim Satteldach.</translation>
    </message>
    <message>
        <source>Length of the opening along the ridge, level; as its side but on a rectangle.</source>
        <translation>Länge der Öffnung längs des Firsts, waagerecht; wie ihre Seite, außer beim Rechteck.</translation>
    </message>
    <message>
        <source>Length of the vent over the cladding, along the ridge; as the width but on a rectangle.</source>
        <translation>Länge des Dachreiters über die Verschalung, längs des Firsts; wie die Breite, außer beim Rechteck.</translation>
    </message>
    <message>
        <source>Length of the vent's own ridge in the covering; 0 where the hips meet in a point.</source>
        <translation>Länge des Firsts des Reiterdachs in der Deckung; 0, wo die Grate in einem Punkt zusammenlaufen.</translation>
    </message>
    <message>
        <source>Length of unbroken ridge that the vents share; 0 if it does not matter.</source>
        <translation>Länge des ununterbrochenen Firsts, den sich die Dachreiter teilen; 0, wenn sie keine Rolle spielt.</translation>
    </message>
    <message>
        <source>Length of your driver with its bit, along the screw.</source>
        <translation>Länge Ihres Schraubers mit Bit, in Richtung der Schraube.</translation>
    </message>
    <message>
        <source>Length × width × thickness</source>
        <translation>Länge × Breite × Dicke</translation>
    </message>
    <message>
        <source>Length, width and thickness of each piece's blank, in mm.</source>
        <translation>Länge, Breite und Dicke des Rohlings jedes Stücks, in mm.</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>Level the seat first, or measure again.</source>
        <translation>Richten Sie zuerst das Auflager, oder messen Sie noch einmal.</translation>
    </message>
    <message>
        <source>Lift limit</source>
        <translation>Hebegrenze</translation>
    </message>
    <message>
        <source>List every mark as it stands in the report and find its pieces in the model, or the mark of a piece that is picked.</source>
        <translation>Alle Zeichen auflisten, wie sie im Bericht stehen, und ihre Stücke im Modell finden, oder das Zeichen eines gewählten Stücks.</translation>
    </message>
    <message>
        <source>List which lengths and angles changed since a report was written (its cuts.json), and which pieces already cut can be kept.</source>
        <translation>Auflisten, welche Längen und Winkel sich geändert haben, seit ein Bericht geschrieben wurde (seine cuts.json), und welche schon gesägten Stücke bleiben können.</translation>
    </message>
    <message>
        <source>Long edges of the slats: ripped plumb to the stiles' faces, or left square.</source>
        <translation>Längskanten der Lamellen: lotrecht, bündig mit den Wangen gesägt, oder rechtwinklig gelassen.</translation>
    </message>
    <message>
        <source>Longest clear width that a slat may bridge without a mullion.</source>
        <translation>Größte lichte Breite, die eine Lamelle ohne Mittelpfosten überspannen darf.</translation>
    </message>
    <message>
        <source>Lookout</source>
        <translation>Kragholz</translation>
    </message>
    <message>
        <source>Louver height</source>
        <translation>Höhe des Lamellenabschnitts</translation>
    </message>
    <message>
        <source>Louver stage</source>
        <translation>Lamellenabschnitt</translation>
    </message>
    <message>
        <source>Louver weight</source>
        <translation>Gewicht des Lamellenabschnitts</translation>
    </message>
    <message>
        <source>Louvered vent</source>
        <translation>Dachreiter mit Lamellen</translation>
    </message>
    <message>
        <source>Louvers</source>
        <translation>Lamellen</translation>
    </message>
    <message>
        <source>Louverwright's preferences: {sentence}</source>
        <translation>Einstellungen von Louverwright: {sentence}</translation>
    </message>
    <message>
        <source>Lower it below {most}.</source>
        <translation>Setzen Sie es unter {most}.</translation>
    </message>
    <message>
        <source>Lower the base, make the vent narrower, or choose thicker frame stock, or give the gable sides a second rail.</source>
        <translation>Machen Sie den Sockel niedriger oder den Dachreiter schmaler, wählen Sie dickeres Rahmenholz, oder geben Sie den Giebelseiten einen zweiten Riegel.</translation>
    </message>
    <message>
        <source>Lower the base, make the vent narrower, or choose thicker frame stock.</source>
        <translation>Machen Sie den Sockel niedriger oder den Dachreiter schmaler, oder wählen Sie dickeres Rahmenholz.</translation>
    </message>
    <message>
        <source>Main dimensions</source>
        <translation>Hauptmaße</translation>
    </message>
    <message>
        <source>Make a louvered vent in the active document, with its dimensions in a panel and a picture in the 3D view.</source>
        <translation>Einen Dachreiter mit Lamellen im aktiven Dokument machen, mit seinen Maßen in einem Fenster und einem Bild in der 3D-Ansicht.</translation>
    </message>
    <message>
        <source>Make at least one of them.</source>
        <translation>Machen Sie mindestens eines davon.</translation>
    </message>
    <message>
        <source>Make fewer vents, or narrower ones.</source>
        <translation>Machen Sie weniger oder schmalere Dachreiter.</translation>
    </message>
    <message>
        <source>Make it and the width differ by {least} or more, or set it to 0 for a square.</source>
        <translation>Machen Sie den Unterschied zur Breite {least} oder größer, oder setzen Sie sie für ein Quadrat auf 0.</translation>
    </message>
    <message>
        <source>Make it more nearly square.</source>
        <translation>Machen Sie ihn annähernd quadratisch.</translation>
    </message>
    <message>
        <source>Make it no steeper than the slats, {slat_angle:g}°, and no thicker.</source>
        <translation>Machen Sie ihn nicht steiler als die Lamellen, {slat_angle:g}°, und nicht dicker.</translation>
    </message>
    <message>
        <source>Make it smaller, and make fewer or narrower vents.</source>
        <translation>Machen Sie ihn kleiner, und machen Sie weniger oder schmalere Dachreiter.</translation>
    </message>
    <message>
        <source>Make it steeper, or the vent longer.</source>
        <translation>Machen Sie sie steiler oder den Dachreiter länger.</translation>
    </message>
    <message>
        <source>Make it {least} or more, or choose narrower battens.</source>
        <translation>Setzen Sie sie auf {least} oder mehr, oder wählen Sie schmalere Leisten.</translation>
    </message>
    <message>
        <source>Make it {least} or more.</source>
        <translation>Setzen Sie den Wert auf {least} oder mehr.</translation>
    </message>
    <message>
        <source>Make the margin smaller, or the vent wider.</source>
        <translation>Machen Sie den Abstand kleiner oder den Dachreiter breiter.</translation>
    </message>
    <message>
        <source>Make the overhang narrower, the roof flatter, the heel higher or the tails thinner.</source>
        <translation>Machen Sie den Überstand schmaler, das Dach flacher, das Obholz höher oder die Sparrenköpfe niedriger.</translation>
    </message>
    <message>
        <source>Make the overhang wider, the roof steeper, or the tails deeper.</source>
        <translation>Machen Sie den Überstand breiter, das Dach steiler oder die Sparrenköpfe höher.</translation>
    </message>
    <message>
        <source>Make the panel shallower, or choose wider frame stock.</source>
        <translation>Machen Sie das Feld weniger tief, oder wählen Sie breiteres Rahmenholz.</translation>
    </message>
    <message>
        <source>Make the panel shallower, or choose wider stile stock.</source>
        <translation>Machen Sie das Feld weniger tief, oder wählen Sie breiteres Holz für die Wangen.</translation>
    </message>
    <message>
        <source>Make the panel shallower, the battens thinner or the posts wider.</source>
        <translation>Machen Sie das Feld weniger tief, die Leisten dünner oder die Pfosten breiter.</translation>
    </message>
    <message>
        <source>Make the panel shallower, the slats flatter, or choose wider slat stock.</source>
        <translation>Machen Sie das Feld weniger tief, die Lamellen flacher, oder wählen Sie breiteres Lamellenholz.</translation>
    </message>
    <message>
        <source>Make the ring flatter, or the frame stock wider.</source>
        <translation>Machen Sie den Tropfkranz flacher oder das Rahmenholz breiter.</translation>
    </message>
    <message>
        <source>Make the ring narrower or flatter.</source>
        <translation>Machen Sie den Tropfkranz schmaler oder flacher.</translation>
    </message>
    <message>
        <source>Make the roof flatter, or the rafters deeper.</source>
        <translation>Machen Sie das Dach flacher oder die Sparren höher.</translation>
    </message>
    <message>
        <source>Make the roof steeper or the vent wider, or board the gables.</source>
        <translation>Machen Sie das Dach steiler oder den Dachreiter breiter, oder verschalen Sie die Giebel.</translation>
    </message>
    <message>
        <source>Make the roof steeper, or leave the mast out.</source>
        <translation>Machen Sie das Dach steiler, oder lassen Sie den Mast weg.</translation>
    </message>
    <message>
        <source>Make the sill flatter, or choose wider slat stock.</source>
        <translation>Machen Sie die Sohlbank flacher, oder wählen Sie breiteres Lamellenholz.</translation>
    </message>
    <message>
        <source>Make the sill flatter, or take fewer slats.</source>
        <translation>Machen Sie die Sohlbank flacher, oder nehmen Sie weniger Lamellen.</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Zeichen</translation>
    </message>
    <message>
        <source>Mast bearer</source>
        <translation>Mastträger</translation>
    </message>
    <message>
        <source>Mast diameter</source>
        <translation>Mastdurchmesser</translation>
    </message>
    <message>
        <source>Mast step</source>
        <translation>Mastspur</translation>
    </message>
    <message>
        <source>May be off by</source>
        <translation>Mögliche Abweichung</translation>
    </message>
    <message>
        <source>Measure again, plumb, at the corner of the vent.</source>
        <translation>Messen Sie noch einmal, lotrecht, an der Ecke des Dachreiters.</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>Measured on the roof</source>
        <translation>Auf dem Dach gemessen</translation>
    </message>
    <message>
        <source>Mend the expression or take it away.</source>
        <translation>Berichtigen Sie den Ausdruck, oder entfernen Sie ihn.</translation>
    </message>
    <message>
        <source>Mesh with battens on the inner face of each panel.</source>
        <translation>Gewebe mit Leisten auf der Innenseite jedes Felds.</translation>
    </message>
    <message>
        <source>Millimetre step</source>
        <translation>Millimeterschritt</translation>
    </message>
    <message>
        <source>Millimetres are rounded to this on the report.</source>
        <translation>Auf so viel werden Millimeter im Bericht gerundet.</translation>
    </message>
    <message>
        <source>Moisture of the {stock}, as measured, in percent of its dry weight; weights follow from it.</source>
        <translation>Gemessene Holzfeuchte ({stock}), in Prozent des Trockengewichts; die Gewichte folgen daraus.</translation>
    </message>
    <message>
        <source>More than two slopes meet at the edge picked. Pick the two slopes of the ridge instead.</source>
        <translation>An der gewählten Kante treffen sich mehr als zwei Dachflächen. Wählen Sie stattdessen die beiden Dachflächen des Firsts.</translation>
    </message>
    <message>
        <source>Most wood left on a leg's foot below the slopes in use, plumb.</source>
        <translation>Größte Holzzugabe am Fuß eines Stiels unter den verwendeten Dachflächen, lotrecht.</translation>
    </message>
    <message>
        <source>Move the vent nearer to the ridge, make it wider, or seat it on one slope.</source>
        <translation>Rücken Sie den Dachreiter näher an den First, machen Sie ihn breiter, oder setzen Sie ihn auf eine Dachfläche.</translation>
    </message>
    <message>
        <source>Mullion</source>
        <translation>Mittelpfosten</translation>
    </message>
    <message>
        <source>Name of the job, as it stands in the report's title block.</source>
        <translation>Name des Auftrags, wie er im Schriftfeld des Berichts steht.</translation>
    </message>
    <message>
        <source>Narrowest place on the way to the roof: a hatch, a door, between the rails of a scaffold.</source>
        <translation>Engste Stelle auf dem Weg zum Dach: eine Luke, eine Tür, zwischen den Geländern eines Gerüsts.</translation>
    </message>
    <message>
        <source>Net free area of the louvers: head and sill gaps are closed, screen taken off.</source>
        <translation>Freier Querschnitt der Lamellen: Fugen an Kopf und Sohlbank sind geschlossen, das Gitter ist abgezogen.</translation>
    </message>
    <message>
        <source>Net free area wanted from each vent, in square metres.</source>
        <translation>Freier Querschnitt, der von jedem Dachreiter verlangt wird, in Quadratmetern.</translation>
    </message>
    <message>
        <source>New vent</source>
        <translation>Neuer Dachreiter</translation>
    </message>
    <message>
        <source>New vents</source>
        <translation>Neue Dachreiter</translation>
    </message>
    <message>
        <source>New vents begin with these. Vents that are there keep their own.</source>
        <translation>Neue Dachreiter beginnen damit. Vorhandene Dachreiter behalten ihre eigenen Werte.</translation>
    </message>
    <message>
        <source>No roof is taken: the vent stands free, and its pitches are entered by hand.</source>
        <translation>Es ist kein Dach gewählt: der Dachreiter steht frei, und seine Neigungen werden von Hand eingegeben.</translation>
    </message>
    <message>
        <source>No size is given: length, width or thickness of the finished piece is needed. Give one, or say that the piece is lost.</source>
        <translation>Es ist kein Maß angegeben: Länge, Breite oder Dicke des fertigen Stücks wird gebraucht. Geben Sie eines an, oder dass das Stück verloren ist.</translation>
    </message>
    <message>
        <source>Not made here: bought, used again, or not wanted. Its pieces are in no model, count or weight, the report lists it as left out, and its neighbours stay as they are.</source>
        <translation>Wird hier nicht gemacht: gekauft, wiederverwendet oder nicht gewünscht. Seine Stücke sind in keinem Modell, keiner Zahl und keinem Gewicht, der Bericht führt es als weggelassen auf, und seine Nachbarn bleiben, wie sie sind.</translation>
    </message>
    <message>
        <source>Note of {mark} ({name})</source>
        <translation>Notiz von {mark} ({name})</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Bemerkungen</translation>
    </message>
    <message>
        <source>Nothing can be said about this part.</source>
        <translation>Über dieses Teil lässt sich nichts sagen.</translation>
    </message>
    <message>
        <source>Nothing is left of the opening: {name} covers it. Set a thinner board, a smaller opening margin, or a wider vent.</source>
        <translation>Von der Öffnung bleibt nichts: sie ist ganz verdeckt durch {name}. Wählen Sie ein dünneres Brett, einen kleineren Randabstand der Öffnung oder einen breiteren Dachreiter.</translation>
    </message>
    <message>
        <source>Nothing is picked. {needed}.</source>
        <translation>Es ist nichts gewählt. {needed}.</translation>
    </message>
    <message>
        <source>Nothing is written where {what} is needed: write {what}.</source>
        <translation>Hier fehlt etwas; gebraucht wird: {what}.</translation>
    </message>
    <message>
        <source>Nothing of what was picked looks up at a pitch of less than {steepest:g}°: there is no roof to stand a vent on. Pick the roof, one of its slopes, or its ridge.</source>
        <translation>Nichts von dem Gewählten schaut mit weniger als {steepest:g}° Neigung nach oben: da ist kein Dach für einen Dachreiter. Wählen Sie das Dach, eine seiner Flächen oder seinen First.</translation>
    </message>
    <message>
        <source>Number of sides of the plan: 4, 6 or 8.</source>
        <translation>Zahl der Seiten des Grundrisses: 4, 6 oder 8.</translation>
    </message>
    <message>
        <source>Number of the arrangement of these properties.</source>
        <translation>Nummer der Anordnung dieser Eigenschaften.</translation>
    </message>
    <message>
        <source>Of the free area wanted, {area}, the vent gives all.</source>
        <translation>Den verlangten freien Querschnitt, {area}, gibt der Dachreiter ganz.</translation>
    </message>
    <message>
        <source>Of the free area wanted, {area}, {missing} is missing; the narrowest is the {narrowest}.</source>
        <translation>Vom verlangten freien Querschnitt, {area}, fehlen {missing}; die engste Stelle: {narrowest}.</translation>
    </message>
    <message>
        <source>Offcuts that you have already, as stock and lengths: 2x4: 1200, 900; 1x6: 2 m. A bare number is in mm.</source>
        <translation>Reststücke, die Sie schon haben, als Holz und Längen: 2x4: 1200, 900; 1x6: 2 m. Eine bloße Zahl ist in mm.</translation>
    </message>
    <message>
        <source>On a roof that is drawn: how far along the ridge the vent's axis stands from the end that FromEnd names. Several vents stand by EndDistance.</source>
        <translation>Auf einem gezeichneten Dach: wie weit die Achse des Dachreiters längs des Firsts von dem Ende steht, das FromEnd nennt. Mehrere Dachreiter stehen nach EndDistance.</translation>
    </message>
    <message>
        <source>Open the folder</source>
        <translation>Ordner öffnen</translation>
    </message>
    <message>
        <source>Opening</source>
        <translation>Öffnung</translation>
    </message>
    <message>
        <source>Opening margin</source>
        <translation>Randabstand der Öffnung</translation>
    </message>
    <message>
        <source>Opening margin is {margin}: nothing is left of the opening between the legs. Set it below {most}.</source>
        <translation>Randabstand der Öffnung ist {margin}: zwischen den Stielen bleibt von der Öffnung nichts. Setzen Sie ihn unter {most}.</translation>
    </message>
    <message>
        <source>Overall height</source>
        <translation>Gesamthöhe</translation>
    </message>
    <message>
        <source>Overall width</source>
        <translation>Gesamtbreite</translation>
    </message>
    <message>
        <source>Overhang</source>
        <translation>Dachüberstand</translation>
    </message>
    <message>
        <source>Own stock of {mark} ({name})</source>
        <translation>Eigenes Holz von {mark} ({name})</translation>
    </message>
    <message>
        <source>Paint coats</source>
        <translation>Deckanstriche</translation>
    </message>
    <message>
        <source>Paint coverage</source>
        <translation>Ergiebigkeit der Farbe</translation>
    </message>
    <message>
        <source>Panel clearance</source>
        <translation>Spielraum des Felds</translation>
    </message>
    <message>
        <source>Panel depth</source>
        <translation>Feldtiefe</translation>
    </message>
    <message>
        <source>Paper size</source>
        <translation>Papiergröße</translation>
    </message>
    <message>
        <source>Paper that the report is laid out for.</source>
        <translation>Papier, für das der Bericht gesetzt wird.</translation>
    </message>
    <message>
        <source>Paper units</source>
        <translation>Einheiten auf Papier</translation>
    </message>
    <message>
        <source>Papers for the shop</source>
        <translation>Papiere für die Werkstatt</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Part, yours to set</source>
        <translation>Teil, von Ihnen zu setzen</translation>
    </message>
    <message>
        <source>Parts and marks</source>
        <translation>Teile und Zeichen</translation>
    </message>
    <message>
        <source>Passage width</source>
        <translation>Durchgangsbreite</translation>
    </message>
    <message>
        <source>Pick two slopes, the ridge, one slope, or the whole roof</source>
        <translation>Wählen Sie zwei Dachflächen, den First, eine Dachfläche oder das ganze Dach</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Stücke</translation>
    </message>
    <message>
        <source>Pieces of the parts that are left out: not made here, and in no other count.</source>
        <translation>Stücke der Teile, die weggelassen sind: hier nicht gemacht und in keiner anderen Zahl.</translation>
    </message>
    <message>
        <source>Pieces to cut for all vents on the ridge.</source>
        <translation>Zu sägende Stücke aller Dachreiter auf dem First.</translation>
    </message>
    <message>
        <source>Pieces to cut.</source>
        <translation>Zu sägende Stücke.</translation>
    </message>
    <message>
        <source>Pitch error</source>
        <translation>Fehler der Neigung</translation>
    </message>
    <message>
        <source>Pitch left</source>
        <translation>Neigung links</translation>
    </message>
    <message>
        <source>Pitch of a flared roof's eave, below the break.</source>
        <translation>Neigung der Traufe eines geknickten Dachs, unter dem Knick.</translation>
    </message>
    <message>
        <source>Pitch of a rectangle's end faces, over its short sides, where it is another than the long faces'; their overhang follows, so that all eaves are level.</source>
        <translation>Neigung der Walmflächen eines Rechtecks, über seinen kurzen Seiten, wo sie anders ist als die der langen Flächen; ihr Überstand folgt daraus, so dass alle Traufen gleich hoch sind.</translation>
    </message>
    <message>
        <source>Pitch of a rectangle's end faces, where it differs; else 0.</source>
        <translation>Neigung der Walmflächen eines Rechtecks, wo sie anders ist; sonst 0.</translation>
    </message>
    <message>
        <source>Pitch of the barn's left slope that the vent is made to.</source>
        <translation>Neigung der linken Dachfläche der Scheune, nach der der Dachreiter gemacht ist.</translation>
    </message>
    <message>
        <source>Pitch of the barn's right slope that the vent is made to.</source>
        <translation>Neigung der rechten Dachfläche der Scheune, nach der der Dachreiter gemacht ist.</translation>
    </message>
    <message>
        <source>Pitch of the faces below the break of a flared roof; 0 where it is not flared.</source>
        <translation>Neigung der Flächen unter dem Knick eines geknickten Dachs; 0, wo es keinen Knick hat.</translation>
    </message>
    <message>
        <source>Pitch of the slope on your left when you look along the vent's +X axis, from the level.</source>
        <translation>Neigung der Dachfläche zu Ihrer Linken, wenn Sie längs der +X-Achse des Dachreiters schauen, gegen die Waagerechte.</translation>
    </message>
    <message>
        <source>Pitch of the slope on your right when you look along the vent's +X axis, from the level.</source>
        <translation>Neigung der Dachfläche zu Ihrer Rechten, wenn Sie längs der +X-Achse des Dachreiters schauen, gegen die Waagerechte.</translation>
    </message>
    <message>
        <source>Pitch of the vent's roof faces from the level (not the slope of its hips).</source>
        <translation>Neigung der Flächen des Reiterdachs gegen die Waagerechte (nicht die Neigung seiner Grate).</translation>
    </message>
    <message>
        <source>Pitch of the vent's roof faces, which is not the slope of its hips.</source>
        <translation>Neigung der Flächen des Reiterdachs, die nicht die Neigung seiner Grate ist.</translation>
    </message>
    <message>
        <source>Pitch right</source>
        <translation>Neigung rechts</translation>
    </message>
    <message>
        <source>Plate moisture</source>
        <translation>Rähmholz: Feuchte</translation>
    </message>
    <message>
        <source>Plate stock</source>
        <translation>Rähmholz</translation>
    </message>
    <message>
        <source>Plate thickness</source>
        <translation>Rähmholz: Dicke</translation>
    </message>
    <message>
        <source>Plate width</source>
        <translation>Rähmholz: Breite</translation>
    </message>
    <message>
        <source>Plumb depth of the rafters' tails at the fascia.</source>
        <translation>Lotrechte Höhe der Sparrenköpfe am Stirnbrett.</translation>
    </message>
    <message>
        <source>Plumb drop from the level of the ridge's highest point under the vent to the covering {where}: at the corner of the rectangle round the plan, over the cladding. Give all four drops or none; the pitches then follow from the smaller drop of each slope.</source>
        <translation>Lotrechtes Maß von der Höhe des höchsten Firstpunkts unter dem Dachreiter hinab zur Deckung {where}: an der Ecke des Rechtecks um den Grundriss, über die Verschalung. Geben Sie alle vier Lotmaße an oder keines; die Neigungen folgen dann aus dem kleineren Lotmaß jeder Dachfläche.</translation>
    </message>
    <message>
        <source>Plumb height of the cladding's foot above the roof covering.</source>
        <translation>Lotrechte Höhe des Fußes der Verschalung über der Deckung.</translation>
    </message>
    <message>
        <source>Plumb height of the roof sheathing's underside above the plate's outer edge.</source>
        <translation>Lotrechte Höhe der Unterseite der Dachschalung über der Außenkante des Rähms.</translation>
    </message>
    <message>
        <source>Post face</source>
        <translation>Pfostenansicht</translation>
    </message>
    <message>
        <source>Post plank</source>
        <translation>Pfostenbohle</translation>
    </message>
    <message>
        <source>Prices</source>
        <translation>Preise</translation>
    </message>
    <message>
        <source>Primer coats</source>
        <translation>Grundanstriche</translation>
    </message>
    <message>
        <source>Project</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>Pull the vent's stages and pieces apart in the 3D view, or take sides away to look in; closing puts all together.</source>
        <translation>Die Abschnitte und Stücke des Dachreiters in der 3D-Ansicht auseinanderziehen, oder Seiten wegnehmen, um hineinzuschauen; beim Schließen kommt alles wieder zusammen.</translation>
    </message>
    <message>
        <source>Put it in quotes.</source>
        <translation>Setzen Sie es in Anführungszeichen.</translation>
    </message>
    <message>
        <source>Qt could not begin to draw the PDF.</source>
        <translation>Qt konnte nicht anfangen, das PDF zu zeichnen.</translation>
    </message>
    <message>
        <source>Rafter moisture</source>
        <translation>Sparrenholz: Feuchte</translation>
    </message>
    <message>
        <source>Rafter stock</source>
        <translation>Sparrenholz</translation>
    </message>
    <message>
        <source>Rafter thickness</source>
        <translation>Sparrenholz: Dicke</translation>
    </message>
    <message>
        <source>Rafter width</source>
        <translation>Sparrenholz: Breite</translation>
    </message>
    <message>
        <source>Rafters per side</source>
        <translation>Sparren je Seite</translation>
    </message>
    <message>
        <source>Rain angle</source>
        <translation>Regenwinkel</translation>
    </message>
    <message>
        <source>Raise it to {least} or more.</source>
        <translation>Setzen Sie den Wert auf {least} oder mehr.</translation>
    </message>
    <message>
        <source>Raise it to {need} or more, or take deeper rafters.</source>
        <translation>Setzen Sie es auf {need} oder mehr, oder nehmen Sie höhere Sparren.</translation>
    </message>
    <message>
        <source>Raise the heel, or take a shallower frame stock.</source>
        <translation>Machen Sie das Obholz höher, oder nehmen Sie niedrigeres Rahmenholz.</translation>
    </message>
    <message>
        <source>Read from the roof that is drawn</source>
        <translation>Vom gezeichneten Dach abgelesen</translation>
    </message>
    <message>
        <source>Read on the slopes: left {left}, right {right}, each ± {reading_error}.</source>
        <translation>Auf den Dachflächen abgelesen: links {left}, rechts {right}, je ± {reading_error}.</translation>
    </message>
    <message>
        <source>Real {size}</source>
        <translation>Wirkliche {size}</translation>
    </message>
    <message>
        <source>Remarks of your own, printed on the report's first page.</source>
        <translation>Eigene Bemerkungen, auf der ersten Seite des Berichts gedruckt.</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Revision</source>
        <translation>Änderungsstand</translation>
    </message>
    <message>
        <source>Revision of the model, as it stands in the report's title block.</source>
        <translation>Revision des Modells, wie sie im Schriftfeld des Berichts steht.</translation>
    </message>
    <message>
        <source>Ridge boards, rafters and others that are drawn and must not be cut: each takes away what lies plumb over or under it.</source>
        <translation>Firsthölzer, Sparren und anderes, das gezeichnet ist und nicht geschnitten werden darf: jedes nimmt weg, was lotrecht über oder unter ihm liegt.</translation>
    </message>
    <message>
        <source>Ridge cap height</source>
        <translation>Höhe der Firsthaube</translation>
    </message>
    <message>
        <source>Ridge cap width</source>
        <translation>Breite der Firsthaube</translation>
    </message>
    <message>
        <source>Ridge length</source>
        <translation>Firstlänge</translation>
    </message>
    <message>
        <source>Ridge moisture</source>
        <translation>Firstholz: Feuchte</translation>
    </message>
    <message>
        <source>Ridge offset</source>
        <translation>Abstand vom First</translation>
    </message>
    <message>
        <source>Ridge piece</source>
        <translation>Firstbohle</translation>
    </message>
    <message>
        <source>Ridge piece of a rectangle's or a gable's roof.</source>
        <translation>Firstbohle des Dachs eines Rechtecks oder eines Satteldachs.</translation>
    </message>
    <message>
        <source>Ridge stock</source>
        <translation>Firstholz</translation>
    </message>
    <message>
        <source>Ridge thickness</source>
        <translation>Firstholz: Dicke</translation>
    </message>
    <message>
        <source>Ridge width</source>
        <translation>Firstholz: Breite</translation>
    </message>
    <message>
        <source>Right rise</source>
        <translation>Höhe rechts</translation>
    </message>
    <message>
        <source>Right run</source>
        <translation>Grundmaß rechts</translation>
    </message>
    <message>
        <source>Right slope</source>
        <translation>Dachfläche rechts</translation>
    </message>
    <message>
        <source>Ring clearance</source>
        <translation>Spielraum des Tropfkranzes</translation>
    </message>
    <message>
        <source>Ring moisture</source>
        <translation>Holz des Tropfkranzes: Feuchte</translation>
    </message>
    <message>
        <source>Ring projection</source>
        <translation>Überstand des Tropfkranzes</translation>
    </message>
    <message>
        <source>Ring slope</source>
        <translation>Neigung des Tropfkranzes</translation>
    </message>
    <message>
        <source>Ring stock</source>
        <translation>Holz des Tropfkranzes</translation>
    </message>
    <message>
        <source>Ring thickness</source>
        <translation>Holz des Tropfkranzes: Dicke</translation>
    </message>
    <message>
        <source>Ring width</source>
        <translation>Holz des Tropfkranzes: Breite</translation>
    </message>
    <message>
        <source>Rise and run</source>
        <translation>Höhe und Grundmaß</translation>
    </message>
    <message>
        <source>Rise over run: left {pitch_left}, right {pitch_right}, tape ± {tape}, which is ± {error}.</source>
        <translation>Höhe zu Grundmaß: links {pitch_left}, rechts {pitch_right}, Maßband ± {tape}, das ist ± {error}.</translation>
    </message>
    <message>
        <source>Roof form</source>
        <translation>Dachform</translation>
    </message>
    <message>
        <source>Roof opening</source>
        <translation>Dachöffnung</translation>
    </message>
    <message>
        <source>Roof opening area</source>
        <translation>Fläche der Dachöffnung</translation>
    </message>
    <message>
        <source>Roof pitch</source>
        <translation>Dachneigung</translation>
    </message>
    <message>
        <source>Roof sheathing</source>
        <translation>Dachschalung</translation>
    </message>
    <message>
        <source>Roof sheathing.</source>
        <translation>Dachschalung.</translation>
    </message>
    <message>
        <source>Roof stage</source>
        <translation>Dachabschnitt</translation>
    </message>
    <message>
        <source>Roof weight</source>
        <translation>Gewicht des Dachabschnitts</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Reihe</translation>
    </message>
    <message>
        <source>Saw compound</source>
        <translation>Doppelgehrung der Säge</translation>
    </message>
    <message>
        <source>Saw crosscut</source>
        <translation>Schnittlänge der Säge</translation>
    </message>
    <message>
        <source>Saw depth</source>
        <translation>Schnitttiefe der Säge</translation>
    </message>
    <message>
        <source>Saw kerf</source>
        <translation>Schnittbreite der Säge</translation>
    </message>
    <message>
        <source>Saw mitre</source>
        <translation>Gehrung der Säge</translation>
    </message>
    <message>
        <source>Saw tilt</source>
        <translation>Blattneigung der Säge</translation>
    </message>
    <message>
        <source>Screen</source>
        <translation>Gitter</translation>
    </message>
    <message>
        <source>Screen batten</source>
        <translation>Gitterleiste</translation>
    </message>
    <message>
        <source>Screen factor</source>
        <translation>Gitterfaktor</translation>
    </message>
    <message>
        <source>Screen mesh.</source>
        <translation>Gittergewebe.</translation>
    </message>
    <message>
        <source>Screen stock</source>
        <translation>Gittergewebe</translation>
    </message>
    <message>
        <source>Screen thickness</source>
        <translation>Gittergewebe: Dicke</translation>
    </message>
    <message>
        <source>Scribe allowance</source>
        <translation>Anreißzugabe</translation>
    </message>
    <message>
        <source>Seat</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Seat depth</source>
        <translation>Einlasstiefe</translation>
    </message>
    <message>
        <source>See the list of parameters.</source>
        <translation>Siehe die Liste der Parameter.</translation>
    </message>
    <message>
        <source>Select two slopes, the ridge, one slope or the whole roof in the 3D view or the tree first.</source>
        <translation>Wählen Sie zuerst in der 3D-Ansicht oder im Baum zwei Dachflächen, den First, eine Dachfläche oder das ganze Dach.</translation>
    </message>
    <message>
        <source>Set a space behind the comma between lengths, and write decimals with a point.</source>
        <translation>Setzen Sie zwischen Längen ein Leerzeichen hinter das Komma und schreiben Sie Dezimalen mit Punkt.</translation>
    </message>
    <message>
        <source>Set all four to 0 and give the pitch, or seat the vent on the ridge.</source>
        <translation>Setzen Sie alle vier auf 0 und geben Sie die Neigung an, oder setzen Sie den Dachreiter auf den First.</translation>
    </message>
    <message>
        <source>Set an even number of rafters, or −1 for automatic.</source>
        <translation>Setzen Sie eine gerade Zahl von Sparren, oder −1 für automatisch.</translation>
    </message>
    <message>
        <source>Set an odd number of rafters, or −1 for automatic.</source>
        <translation>Setzen Sie eine ungerade Zahl von Sparren, oder −1 für automatisch.</translation>
    </message>
    <message>
        <source>Set by the expression {text}</source>
        <translation>Durch den Ausdruck {text} bestimmt</translation>
    </message>
    <message>
        <source>Set it below {most}.</source>
        <translation>Setzen Sie den Wert unter {most}.</translation>
    </message>
    <message>
        <source>Set it to 0 for no relief, or to {least_cap} or more.</source>
        <translation>Auf 0 setzen, dann wird nichts ausgeklinkt, oder auf {least_cap} oder mehr.</translation>
    </message>
    <message>
        <source>Set it to 0 for none, or make the vent square.</source>
        <translation>Setzen Sie ihn auf 0 für keinen, oder machen Sie den Dachreiter quadratisch.</translation>
    </message>
    <message>
        <source>Set it to 0 for none, or raise the base.</source>
        <translation>Setzen Sie die Höhe auf 0 für keinen, oder machen Sie den Sockel höher.</translation>
    </message>
    <message>
        <source>Set it to 0, or take 4 sides.</source>
        <translation>Setzen Sie sie auf 0, oder nehmen Sie 4 Seiten.</translation>
    </message>
    <message>
        <source>Set it to 0, or take a rectangle and a hip roof.</source>
        <translation>Setzen Sie sie auf 0, oder nehmen Sie ein Rechteck und ein Walmdach.</translation>
    </message>
    <message>
        <source>Set it to 0.1, 0.5 or 1.</source>
        <translation>Setzen Sie ihn auf 0.1, 0.5 oder 1.</translation>
    </message>
    <message>
        <source>Set it to 8, 16, 32 or 64.</source>
        <translation>Setzen Sie ihn auf 8, 16, 32 oder 64.</translation>
    </message>
    <message>
        <source>Set it to {least} or more.</source>
        <translation>Setzen Sie den Wert auf {least} oder mehr.</translation>
    </message>
    <message>
        <source>Set it to {most:g}° or less, or take a plain hip roof.</source>
        <translation>Setzen Sie sie auf {most:g}° oder weniger, oder nehmen Sie ein einfaches Walmdach.</translation>
    </message>
    <message>
        <source>Set it to {most} or less, or make the vents narrower.</source>
        <translation>Setzen Sie die Zahl auf {most} oder weniger, oder machen Sie die Dachreiter schmaler.</translation>
    </message>
    <message>
        <source>Set it to {most} or less, or take deeper rafters.</source>
        <translation>Setzen Sie sie auf {most} oder weniger, oder nehmen Sie höhere Sparren.</translation>
    </message>
    <message>
        <source>Set it to {most} or less.</source>
        <translation>Setzen Sie den Wert auf {most} oder weniger.</translation>
    </message>
    <message>
        <source>Share of the opening that the mesh leaves free (1/4 in hardware cloth 1.0, 1/8 in mesh 0.8).</source>
        <translation>Anteil der Öffnung, den das Gewebe frei lässt (1/4-Zoll-Drahtgitter 1,0, 1/8-Zoll-Gewebe 0,8).</translation>
    </message>
    <message>
        <source>Sheathing grain</source>
        <translation>Faser der Dachschalung</translation>
    </message>
    <message>
        <source>Sheathing moisture</source>
        <translation>Platte der Dachschalung: Feuchte</translation>
    </message>
    <message>
        <source>Sheathing span</source>
        <translation>Spannweite der Dachschalung</translation>
    </message>
    <message>
        <source>Sheathing stock</source>
        <translation>Platte der Dachschalung</translation>
    </message>
    <message>
        <source>Sheathing thickness</source>
        <translation>Platte der Dachschalung: Dicke</translation>
    </message>
    <message>
        <source>Sheathing's underside above the plate's outer edge, plumb.</source>
        <translation>Unterseite der Schalung über der Außenkante des Rähms, lotrecht.</translation>
    </message>
    <message>
        <source>Sheet cladding, or upright boards with a gap.</source>
        <translation>Plattenverschalung, oder aufrechte Bretter mit einer Fuge.</translation>
    </message>
    <message>
        <source>Shop</source>
        <translation>Werkstatt</translation>
    </message>
    <message>
        <source>Shop drawings</source>
        <translation>Werkzeichnungen</translation>
    </message>
    <message>
        <source>Shop drawings of {vent}</source>
        <translation>Werkzeichnungen von {vent}</translation>
    </message>
    <message>
        <source>Shop drawings on the next larger paper: A3 for A4, Tabloid for Letter.</source>
        <translation>Werkzeichnungen auf dem nächstgrößeren Papier: A3 für A4, Tabloid für Letter.</translation>
    </message>
    <message>
        <source>Shop drawings: {made} pages made, {renewed} brought up to date, {removed} taken away.</source>
        <translation>Werkzeichnungen: {made} Seiten angelegt, {renewed} auf den Stand gebracht, {removed} entfernt.</translation>
    </message>
    <message>
        <source>Shop offcuts</source>
        <translation>Vorhandene Reststücke</translation>
    </message>
    <message>
        <source>Shorten it.</source>
        <translation>Kürzen Sie ihn.</translation>
    </message>
    <message>
        <source>Shortest offcut</source>
        <translation>Kürzestes Reststück</translation>
    </message>
    <message>
        <source>Shortest offcut that you keep.</source>
        <translation>Kürzestes Reststück, das Sie aufheben.</translation>
    </message>
    <message>
        <source>Shortest piece</source>
        <translation>Kürzestes Stück</translation>
    </message>
    <message>
        <source>Shortest piece that you let your saw cut without a holder.</source>
        <translation>Kürzestes Stück, das Sie Ihre Säge ohne Halter schneiden lassen.</translation>
    </message>
    <message>
        <source>Show the vent as often as its property Vents says, spaced along its RidgeLength; those beyond that number are taken away.</source>
        <translation>Den Dachreiter so oft zeigen, wie seine Eigenschaft Vents sagt, verteilt über seine RidgeLength; die über diese Zahl hinaus werden entfernt.</translation>
    </message>
    <message>
        <source>Side of the opening to cut in the roof, level; across the ridge.</source>
        <translation>Seite der in das Dach zu schneidenden Öffnung, waagerecht; quer zum First.</translation>
    </message>
    <message>
        <source>Sides</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>Sill</source>
        <translation>Sohlbank</translation>
    </message>
    <message>
        <source>Sill bed</source>
        <translation>Sohlbankunterlage</translation>
    </message>
    <message>
        <source>Sill slope</source>
        <translation>Neigung der Sohlbank</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Slat</source>
        <translation>Lamelle</translation>
    </message>
    <message>
        <source>Slat angle</source>
        <translation>Lamellenwinkel</translation>
    </message>
    <message>
        <source>Slat count</source>
        <translation>Zahl der Lamellen</translation>
    </message>
    <message>
        <source>Slat edges</source>
        <translation>Lamellenkanten</translation>
    </message>
    <message>
        <source>Slat moisture</source>
        <translation>Lamellenholz: Feuchte</translation>
    </message>
    <message>
        <source>Slat spacing</source>
        <translation>Lamellenabstand</translation>
    </message>
    <message>
        <source>Slat span</source>
        <translation>Spannweite der Lamellen</translation>
    </message>
    <message>
        <source>Slat stock</source>
        <translation>Lamellenholz</translation>
    </message>
    <message>
        <source>Slat thickness</source>
        <translation>Lamellenholz: Dicke</translation>
    </message>
    <message>
        <source>Slat width</source>
        <translation>Lamellenholz: Breite</translation>
    </message>
    <message>
        <source>Slats</source>
        <translation>Lamellen</translation>
    </message>
    <message>
        <source>Slats and sills.</source>
        <translation>Lamellen und Sohlbänke.</translation>
    </message>
    <message>
        <source>Slats in each gable end, without the sill.</source>
        <translation>Lamellen in jedem Giebel, ohne die Sohlbank.</translation>
    </message>
    <message>
        <source>Slats in one panel, without the sill.</source>
        <translation>Lamellen in einem Feld, ohne die Sohlbank.</translation>
    </message>
    <message>
        <source>Slope of the drip ring from the level.</source>
        <translation>Neigung des Tropfkranzes gegen die Waagerechte.</translation>
    </message>
    <message>
        <source>Slope of the hips below the break of a flared roof; 0 where it is not flared.</source>
        <translation>Neigung der Grate unter dem Knick eines geknickten Dachs; 0, wo es keinen Knick hat.</translation>
    </message>
    <message>
        <source>Slope of the hips, which is not the pitch of the faces; 0 for a gable roof.</source>
        <translation>Neigung der Grate, die nicht die Neigung der Flächen ist; 0 beim Satteldach.</translation>
    </message>
    <message>
        <source>Slope of the sill from the level.</source>
        <translation>Neigung der Sohlbank gegen die Waagerechte.</translation>
    </message>
    <message>
        <source>Slope of the slats from the level.</source>
        <translation>Neigung der Lamellen gegen die Waagerechte.</translation>
    </message>
    <message>
        <source>Slope of the vent's hips from the level; if it is given, the faces' pitch follows from it and the roof pitch is left aside.</source>
        <translation>Neigung der Grate des Reiterdachs gegen die Waagerechte; ist sie angegeben, so folgt die Neigung der Flächen daraus, und die Dachneigung bleibt außer Betracht.</translation>
    </message>
    <message>
        <source>Soffit</source>
        <translation>Untersicht</translation>
    </message>
    <message>
        <source>Soffit moisture</source>
        <translation>Holz der Untersicht: Feuchte</translation>
    </message>
    <message>
        <source>Soffit stock</source>
        <translation>Holz der Untersicht</translation>
    </message>
    <message>
        <source>Soffit thickness</source>
        <translation>Holz der Untersicht: Dicke</translation>
    </message>
    <message>
        <source>Soffit width</source>
        <translation>Holz der Untersicht: Breite</translation>
    </message>
    <message>
        <source>Soffit.</source>
        <translation>Untersicht.</translation>
    </message>
    <message>
        <source>Sole</source>
        <translation>Schwelle</translation>
    </message>
    <message>
        <source>Spoiled, lost or left out</source>
        <translation>Verdorben, verloren oder ausgelassen</translation>
    </message>
    <message>
        <source>Square metres of floor for one of free area: 150 by the usual rule for attics, 300 under its conditions.</source>
        <translation>Quadratmeter Boden auf einen freien Querschnitts: 150 nach der üblichen Regel für Dachräume, 300 unter deren Bedingungen.</translation>
    </message>
    <message>
        <source>Square metres that a litre of primer or paint covers in one coat, as its tin says.</source>
        <translation>Quadratmeter, die ein Liter Grundierung oder Farbe in einem Anstrich deckt, wie es auf der Dose steht.</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Abschnitt</translation>
    </message>
    <message>
        <source>Stage clearance</source>
        <translation>Spielraum des Abschnitts</translation>
    </message>
    <message>
        <source>Stages apart</source>
        <translation>Abschnitte auseinander</translation>
    </message>
    <message>
        <source>Stand free</source>
        <translation>Frei stehen</translation>
    </message>
    <message>
        <source>Steepest sight line, rising inward, that the slats must still block.</source>
        <translation>Steilste nach innen steigende Sichtlinie, die die Lamellen noch verdecken müssen.</translation>
    </message>
    <message>
        <source>Stile</source>
        <translation>Wange</translation>
    </message>
    <message>
        <source>Stile moisture</source>
        <translation>Wangenholz: Feuchte</translation>
    </message>
    <message>
        <source>Stile stock</source>
        <translation>Wangenholz</translation>
    </message>
    <message>
        <source>Stile thickness</source>
        <translation>Wangenholz: Dicke</translation>
    </message>
    <message>
        <source>Stile width</source>
        <translation>Wangenholz: Breite</translation>
    </message>
    <message>
        <source>Stiles and head rails of the louver panels.</source>
        <translation>Wangen und Kopfhölzer der Lamellenfelder.</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Holz</translation>
    </message>
    <message>
        <source>Stock for this kind of part alone, by its name in the vent's stock list: another wood or length of the form and the size of the vent's own. Empty: the vent's.</source>
        <translation>Holz für diese Art von Teil allein, mit seinem Namen in der Holzliste des Dachreiters: ein anderes Holz oder eine andere Länge von Form und Größe des im Dachreiter gewählten. Leer: das des Dachreiters.</translation>
    </message>
    <message>
        <source>Stock list</source>
        <translation>Holzliste</translation>
    </message>
    <message>
        <source>Stock list: us, eu, or the path of a list of your own.</source>
        <translation>Holzliste: us, eu oder der Pfad einer eigenen Liste.</translation>
    </message>
    <message>
        <source>Stock that the pieces are cut from.</source>
        <translation>Holz, aus dem die Stücke gesägt werden.</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Stopped. The sets that are listed are whole; the others were not written.</source>
        <translation>Angehalten. Die aufgeführten Papiere sind vollständig; die anderen wurden nicht geschrieben.</translation>
    </message>
    <message>
        <source>Survey note</source>
        <translation>Vermerk zur Messung</translation>
    </message>
    <message>
        <source>Tail depth</source>
        <translation>Höhe der Sparrenköpfe</translation>
    </message>
    <message>
        <source>Take a smaller rain angle, a steeper slat or a deeper panel.</source>
        <translation>Nehmen Sie einen kleineren Regenwinkel, eine steilere Lamelle oder ein tieferes Feld.</translation>
    </message>
    <message>
        <source>Take a steeper slat or a smaller rain angle.</source>
        <translation>Nehmen Sie eine steilere Lamelle oder einen kleineren Regenwinkel.</translation>
    </message>
    <message>
        <source>Take apart</source>
        <translation>Auseinandernehmen</translation>
    </message>
    <message>
        <source>Take away, to look in:</source>
        <translation>Wegnehmen, um hineinzuschauen:</translation>
    </message>
    <message>
        <source>Take fewer slats, a steeper slat or a deeper panel.</source>
        <translation>Nehmen Sie weniger Lamellen, eine steilere Lamelle oder ein tieferes Feld.</translation>
    </message>
    <message>
        <source>Take it away: the list has no stock of this part's form and size.</source>
        <translation>Nehmen Sie es weg: die Liste hat kein Holz von Form und Größe dieses Teils.</translation>
    </message>
    <message>
        <source>Take that character out.</source>
        <translation>Nehmen Sie dieses Zeichen heraus.</translation>
    </message>
    <message>
        <source>Take the cap away under the vent and set its height to 0, or choose wider frame stock.</source>
        <translation>Entfernen Sie die Haube unter dem Dachreiter und setzen Sie ihre Höhe auf 0, oder wählen Sie breiteres Rahmenholz.</translation>
    </message>
    <message>
        <source>Take the cap away under the vent and set its height to 0, or make the vent wider.</source>
        <translation>Entfernen Sie die Haube unter dem Dachreiter und setzen Sie ihre Höhe auf 0, oder machen Sie den Dachreiter breiter.</translation>
    </message>
    <message>
        <source>Take the shortest out.</source>
        <translation>Nehmen Sie die kürzesten heraus.</translation>
    </message>
    <message>
        <source>Take what is selected</source>
        <translation>Auswahl übernehmen</translation>
    </message>
    <message>
        <source>Take {most} or fewer.</source>
        <translation>Nehmen Sie {most} oder weniger.</translation>
    </message>
    <message>
        <source>Take {needed} slats or more, or a smaller rain angle.</source>
        <translation>Nehmen Sie {needed} Lamellen oder mehr, oder einen kleineren Regenwinkel.</translation>
    </message>
    <message>
        <source>The PDF could not be written to {path}: {error}.</source>
        <translation>Das PDF konnte nicht nach {path} geschrieben werden: {error}.</translation>
    </message>
    <message>
        <source>The PDF is drawn by FreeCAD's Qt (PySide), which this Python does not find: {error}. Run it in FreeCAD, or write the HTML report instead.</source>
        <translation>Das PDF wird mit FreeCADs Qt (PySide) gezeichnet, das dieses Python nicht findet: {error}. Führen Sie es in FreeCAD aus, oder schreiben Sie stattdessen den HTML-Bericht.</translation>
    </message>
    <message>
        <source>The PDF needs a Qt application that can draw, and this process has one that cannot. Write it from FreeCAD's window or its console.</source>
        <translation>Das PDF braucht eine Qt-Anwendung, die zeichnen kann, und dieser Prozess hat eine, die es nicht kann. Schreiben Sie es aus FreeCADs Fenster oder Konsole.</translation>
    </message>
    <message>
        <source>The angle at the ridge and one slope</source>
        <translation>Der Winkel am First und eine Dachfläche</translation>
    </message>
    <message>
        <source>The angle between both slopes, at the ridge</source>
        <translation>Der Winkel zwischen beiden Dachflächen, am First</translation>
    </message>
    <message>
        <source>The answer could not be written to this folder:</source>
        <translation>Die Antwort konnte nicht in diesen Ordner geschrieben werden:</translation>
    </message>
    <message>
        <source>The answer is written, but this system has no viewer for it:</source>
        <translation>Die Antwort ist geschrieben, aber dieses System hat kein Anzeigeprogramm dafür:</translation>
    </message>
    <message>
        <source>The clear opening against the louvers.</source>
        <translation>Die lichte Öffnung im Vergleich mit den Lamellen.</translation>
    </message>
    <message>
        <source>The comparison could not be written to this folder:</source>
        <translation>Der Vergleich konnte nicht in diesen Ordner geschrieben werden:</translation>
    </message>
    <message>
        <source>The comparison is written, but this system has no viewer for it:</source>
        <translation>Der Vergleich ist geschrieben, aber dieses System hat kein Anzeigeprogramm dafür:</translation>
    </message>
    <message>
        <source>The cut list was not written.</source>
        <translation>Die Schnittliste wurde nicht geschrieben.</translation>
    </message>
    <message>
        <source>The description in the tree that the last recompute wrote.</source>
        <translation>Die Beschreibung im Baum, die die letzte Neuberechnung geschrieben hat.</translation>
    </message>
    <message>
        <source>The edge picked {what}, and has {slope} beside it that looks up: it is no ridge. Pick the ridge, or the slopes on both sides of it.</source>
        <translation>Die gewählte Kante {what}, und neben ihr liegt {slope}, die nach oben schaut: sie ist kein First. Wählen Sie den First, oder die Dachflächen beiderseits von ihm.</translation>
    </message>
    <message>
        <source>The edges picked are not on one ridge. Pick one ridge alone.</source>
        <translation>Die gewählten Kanten liegen nicht auf einem First. Wählen Sie nur einen First.</translation>
    </message>
    <message>
        <source>The file cannot be read: {error}.</source>
        <translation>Die Datei lässt sich nicht lesen: {error}.</translation>
    </message>
    <message>
        <source>The file says {told}, and its parameters make model {fingerprint}: they were changed after the report was written, or another version of Louverwright wrote it. Choose the report as it was written.</source>
        <translation>Die Datei sagt {told}, und ihre Parameter ergeben das Modell {fingerprint}: sie wurden nach dem Schreiben des Berichts geändert, oder eine andere Version von Louverwright hat ihn geschrieben. Wählen Sie den Bericht, wie er geschrieben wurde.</translation>
    </message>
    <message>
        <source>The kind of part, as reports and references call it.</source>
        <translation>Die Art des Teils, wie Berichte und Verweise sie nennen.</translation>
    </message>
    <message>
        <source>The kind's number in its stage's marks.</source>
        <translation>Die Nummer der Art in den Zeichen ihres Abschnitts.</translation>
    </message>
    <message>
        <source>The least of louvers, throat and roof opening.</source>
        <translation>Der kleinste Querschnitt von Lamellen, Hals und Dachöffnung.</translation>
    </message>
    <message>
        <source>The list has {count} items, and at most {most} are read. Leave out what you do not use.</source>
        <translation>Die Liste hat {count} Posten, und höchstens {most} werden gelesen. Lassen Sie weg, was Sie nicht brauchen.</translation>
    </message>
    <message>
        <source>The mark of each piece.</source>
        <translation>Das Zeichen jedes Stücks.</translation>
    </message>
    <message>
        <source>The name is empty. Give the item a name.</source>
        <translation>Der Name ist leer. Geben Sie dem Eintrag einen Namen.</translation>
    </message>
    <message>
        <source>The name of each piece, in the order of the shape's solids.</source>
        <translation>Der Name jedes Stücks, in der Reihenfolge der Körper der Form.</translation>
    </message>
    <message>
        <source>The objects that the roof is read from.</source>
        <translation>Die Objekte, von denen das Dach abgelesen wird.</translation>
    </message>
    <message>
        <source>The opening cuts nothing: there is no roof inside the vent's legs, or it is open there already. Move the vent onto the roof, or delete the opening.</source>
        <translation>Die Öffnung schneidet nichts: innerhalb der Stiele des Dachreiters ist kein Dach, oder es ist dort schon offen. Schieben Sie den Dachreiter auf das Dach, oder löschen Sie die Öffnung.</translation>
    </message>
    <message>
        <source>The opening of another vent that was cut into the same roof before this one.</source>
        <translation>Die Öffnung eines anderen Dachreiters, die vor dieser in dasselbe Dach geschnitten wurde.</translation>
    </message>
    <message>
        <source>The opening would cut {name}, over {lost:.0f} cm² in plan, and that is refused. Set a greater opening margin, move the vent, or have it left standing.</source>
        <translation>Die Öffnung würde auf {lost:.0f} cm² im Grundriss schneiden, was nicht geschnitten werden darf: {name}. Setzen Sie einen größeren Randabstand der Öffnung, verschieben Sie den Dachreiter, oder lassen Sie es stehen.</translation>
    </message>
    <message>
        <source>The opening would leave nothing of the roof, which is smaller than the opening. Pick the whole roof for the vent, or make the vent narrower.</source>
        <translation>Die Öffnung ließe nichts vom Dach übrig, das kleiner als die Öffnung ist. Wählen Sie für den Dachreiter das ganze Dach, oder machen Sie den Dachreiter schmaler.</translation>
    </message>
    <message>
        <source>The papers could not be written to the folder {folder}: {reason}. Choose another folder.</source>
        <translation>Die Papiere konnten nicht in den Ordner {folder} geschrieben werden: {reason}. Wählen Sie einen anderen Ordner.</translation>
    </message>
    <message>
        <source>The papers were not written.</source>
        <translation>Die Papiere wurden nicht geschrieben.</translation>
    </message>
    <message>
        <source>The parts cannot be listed.</source>
        <translation>Die Teile können nicht aufgelistet werden.</translation>
    </message>
    <message>
        <source>The report could not be written to this folder:</source>
        <translation>Der Bericht konnte nicht in diesen Ordner geschrieben werden:</translation>
    </message>
    <message>
        <source>The report is written, but this system has no viewer for it:</source>
        <translation>Der Bericht ist geschrieben, aber dieses System hat kein Anzeigeprogramm dafür:</translation>
    </message>
    <message>
        <source>The report was not written.</source>
        <translation>Der Bericht wurde nicht geschrieben.</translation>
    </message>
    <message>
        <source>The ridge slopes {tilt:.2f}° along its length; up to {level_ridge:g}° counts as level. Set the vent on by hand and enter the drops at its four corners, so that its feet are scribed to the roof.</source>
        <translation>Der First fällt seiner Länge nach um {tilt:.2f}°; bis {level_ridge:g}° gilt er als waagerecht. Setzen Sie den Dachreiter von Hand auf und geben Sie die Lotmaße an seinen vier Ecken ein, damit seine Füße dem Dach angerissen werden.</translation>
    </message>
    <message>
        <source>The roof goes on for more than {depth} under the opening, as a building in one solid does: cut so deep, plumb. Depth takes another.</source>
        <translation>Das Dach geht unter der Öffnung mehr als {depth} weiter, wie bei einem Gebäude aus einem einzigen Körper: so tief geschnitten, lotrecht. Depth nimmt eine andere Tiefe.</translation>
    </message>
    <message>
        <source>The roof has more than one ridge of {ridge_length:.0f} mm. Pick the ridge, or the slopes on both sides of it.</source>
        <translation>Das Dach hat mehr als einen First von {ridge_length:.0f} mm. Wählen Sie den First, oder die Dachflächen beiderseits von ihm.</translation>
    </message>
    <message>
        <source>The roof has one slope only, and that is the left one. Choose the left slope.</source>
        <translation>Das Dach hat nur eine Fläche, und die ist die linke. Wählen Sie die linke Dachfläche.</translation>
    </message>
    <message>
        <source>The roof is read again when one of these changes.</source>
        <translation>Das Dach wird neu abgelesen, wenn sich eines davon ändert.</translation>
    </message>
    <message>
        <source>The roof that is drawn</source>
        <translation>Das gezeichnete Dach</translation>
    </message>
    <message>
        <source>The roof's planes and ridge, by which it is found again.</source>
        <translation>Die Ebenen und der First des Dachs, an denen es wiedergefunden wird.</translation>
    </message>
    <message>
        <source>The roof, or what it stands in, is gone. Pick the roof again with Edit vent.</source>
        <translation>Das Dach, oder worin es steht, ist nicht mehr da. Wählen Sie das Dach noch einmal mit „Dachreiter ändern“.</translation>
    </message>
    <message>
        <source>The roof, or what it stands in, is gone. Pick the roof again.</source>
        <translation>Das Dach, oder worin es steht, ist nicht mehr da. Wählen Sie das Dach noch einmal.</translation>
    </message>
    <message>
        <source>The shop drawings were not made.</source>
        <translation>Die Werkzeichnungen wurden nicht angefertigt.</translation>
    </message>
    <message>
        <source>The slope that the vent stands on is not there any more, nor any like it. Pick the roof again.</source>
        <translation>Die Dachfläche, auf der der Dachreiter steht, ist nicht mehr da, auch keine ähnliche. Wählen Sie das Dach noch einmal.</translation>
    </message>
    <message>
        <source>The stage, as reports and references call it.</source>
        <translation>Der Abschnitt, wie Berichte und Verweise ihn nennen.</translation>
    </message>
    <message>
        <source>The stock list “{name}” cannot be read: {error}. Give us, eu, or the path of a list of your own.</source>
        <translation>Die Holzliste „{name}“ lässt sich nicht lesen: {error}. Geben Sie us, eu oder den Pfad einer eigenen Liste an.</translation>
    </message>
    <message>
        <source>The survey has no reading of the roof. Give ridge_angle, slope_left, or rise_left and run_left.</source>
        <translation>Die Messung hat keine Ablesung vom Dach. Geben Sie ridge_angle, slope_left, oder rise_left und run_left an.</translation>
    </message>
    <message>
        <source>The two slopes are {what}, {where}: they meet in no ridge. Pick a slope on each side of the ridge, or one face alone for a vent on one slope or on a flat roof.</source>
        <translation>Die beiden Dachflächen sind {what}, {where}: sie treffen sich in keinem First. Wählen Sie eine Dachfläche auf jeder Seite des Firsts, oder nur eine Fläche für einen Dachreiter auf einer Dachfläche oder einem Flachdach.</translation>
    </message>
    <message>
        <source>The two slopes do not meet in a ridge: at least one of them lies beyond the line that their planes meet in. Pick the two slopes of one roof.</source>
        <translation>Die beiden Dachflächen treffen sich nicht in einem First: mindestens eine liegt jenseits der Linie, in der sich ihre Ebenen treffen. Wählen Sie die beiden Flächen eines Dachs.</translation>
    </message>
    <message>
        <source>The two slopes do not reach each other: along the line that their planes meet in, no stretch has an edge of both within {reach:g} mm. Pick the two slopes of one ridge.</source>
        <translation>Die beiden Dachflächen reichen nicht aneinander: längs der Linie, in der sich ihre Ebenen treffen, hat kein Stück eine Kante von beiden innerhalb von {reach:g} mm. Wählen Sie die beiden Dachflächen eines Firsts.</translation>
    </message>
    <message>
        <source>The two slopes fall the same way, so that they meet in a break of the slope and not in a ridge. Pick the slopes on both sides of the ridge.</source>
        <translation>Die beiden Dachflächen fallen nach derselben Seite, so dass sie sich in einem Knick und nicht in einem First treffen. Wählen Sie die Dachflächen beiderseits des Firsts.</translation>
    </message>
    <message>
        <source>The two slopes fall towards each other: they meet in a valley, and a vent there would dam the water. Pick two slopes that fall away from a ridge.</source>
        <translation>Die beiden Dachflächen fallen gegeneinander: sie treffen sich in einer Kehle, und ein Dachreiter würde dort das Wasser stauen. Wählen Sie zwei Dachflächen, die von einem First weg fallen.</translation>
    </message>
    <message>
        <source>The two slopes meet in a line that slopes {tilt:.1f}°: that is a hip or a valley, and a vent needs a level ridge. Pick the slopes on both sides of the ridge.</source>
        <translation>Die beiden Dachflächen treffen sich in einer Linie, die um {tilt:.1f}° geneigt ist: das ist ein Grat oder eine Kehle, und ein Dachreiter braucht einen waagerechten First. Wählen Sie die Dachflächen beiderseits des Firsts.</translation>
    </message>
    <message>
        <source>The two slopes that the vent stands on are not there any more, nor any ridge like theirs. Pick the roof again.</source>
        <translation>Die beiden Dachflächen, auf denen der Dachreiter steht, sind nicht mehr da, auch kein First wie der ihre. Wählen Sie das Dach noch einmal.</translation>
    </message>
    <message>
        <source>The vent cannot be taken apart.</source>
        <translation>Der Dachreiter kann nicht auseinandergenommen werden.</translation>
    </message>
    <message>
        <source>The vent of this opening is gone; the opening keeps its last shape. Choose another vent in the property Vent, or delete the opening, and the roof is shown whole again.</source>
        <translation>Der Dachreiter dieser Öffnung ist nicht mehr da; die Öffnung behält ihre letzte Form. Wählen Sie einen anderen Dachreiter in der Eigenschaft Vent, oder löschen Sie die Öffnung, und das Dach wird wieder ganz gezeigt.</translation>
    </message>
    <message>
        <source>The vent that is drawn.</source>
        <translation>Der Dachreiter, der gezeichnet ist.</translation>
    </message>
    <message>
        <source>The vent that the opening is cut for, with all others of its row.</source>
        <translation>Der Dachreiter, für den die Öffnung geschnitten ist, mit allen anderen seiner Reihe.</translation>
    </message>
    <message>
        <source>The vent that the part belongs to.</source>
        <translation>Der Dachreiter, zu dem das Teil gehört.</translation>
    </message>
    <message>
        <source>The vent that the stage belongs to.</source>
        <translation>Der Dachreiter, zu dem der Abschnitt gehört.</translation>
    </message>
    <message>
        <source>The vent that this one is alike to, the first of the row.</source>
        <translation>Der Dachreiter, dem dieser gleicht, der erste der Reihe.</translation>
    </message>
    <message>
        <source>The vent was not compared.</source>
        <translation>Der Dachreiter wurde nicht verglichen.</translation>
    </message>
    <message>
        <source>The vent whose cut list this is.</source>
        <translation>Der Dachreiter, dessen Schnittliste das ist.</translation>
    </message>
    <message>
        <source>The vent's axis would stand {past:.0f} mm past the end of the ridge, which is {total:.0f} mm long. Enter a distance from the {end} that stays on the ridge.</source>
        <translation>Die Achse des Dachreiters stünde {past:.0f} mm über das Ende des Firsts hinaus, der {total:.0f} mm lang ist. Geben Sie einen Abstand ({end}) ein, der auf dem First bleibt.</translation>
    </message>
    <message>
        <source>The wish that the last recompute found.</source>
        <translation type="vanished">Der Wunsch, den die letzte Neuberechnung vorfand.</translation>
    </message>
    <message>
        <source>They are not the parts of a report.</source>
        <translation>Das sind nicht die Teile eines Berichts.</translation>
    </message>
    <message>
        <source>Thickest stock that your saw cuts with its blade upright.</source>
        <translation>Dickstes Holz, das Ihre Säge mit aufrechtem Blatt schneidet.</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Thickness of the ridge board under the opening, which is never cut. 0: none. A vent on one slope has none.</source>
        <translation>Dicke des Firstholzes unter der Öffnung, das nie geschnitten wird. 0: keines. Ein Dachreiter auf einer Dachfläche hat keines.</translation>
    </message>
    <message>
        <source>Thickness of the {stock}, as measured.</source>
        <translation>Gemessene Dicke ({stock}).</translation>
    </message>
    <message>
        <source>This cannot be printed: {limit}. {cure}</source>
        <translation>Das kann nicht gedruckt werden: {limit}. {cure}</translation>
    </message>
    <message>
        <source>This is a picture. Vent and document stay as they are, and closing puts all together.</source>
        <translation>Das ist ein Bild. Dachreiter und Dokument bleiben, wie sie sind, und beim Schließen kommt alles wieder zusammen.</translation>
    </message>
    <message>
        <source>This system has no viewer for {path}.</source>
        <translation>Dieses System hat kein Programm, das {path} anzeigt.</translation>
    </message>
    <message>
        <source>Top of the base above the ridge.</source>
        <translation>Oberkante des Sockels über dem First.</translation>
    </message>
    <message>
        <source>Top rail</source>
        <translation>Oberriegel</translation>
    </message>
    <message>
        <source>Total weight</source>
        <translation>Gesamtgewicht</translation>
    </message>
    <message>
        <source>Trade's rule for the width: inches of vent for each foot of its share of the ridge (1.25 is 104 mm per metre).</source>
        <translation>Handwerksregel für die Breite: Zoll Dachreiter je Fuß seines Anteils am First (1,25 sind 104 mm je Meter).</translation>
    </message>
    <message>
        <source>Trim</source>
        <translation>Deckbrett</translation>
    </message>
    <message>
        <source>Trim and frieze of the louver stage.</source>
        <translation>Deckbretter und Fries des Lamellenabschnitts.</translation>
    </message>
    <message>
        <source>Trim clearance</source>
        <translation>Fuge unter den Deckbrettern</translation>
    </message>
    <message>
        <source>Trim lap</source>
        <translation>Überdeckung der Deckbretter</translation>
    </message>
    <message>
        <source>Trim moisture</source>
        <translation>Holz der Deckbretter: Feuchte</translation>
    </message>
    <message>
        <source>Trim stock</source>
        <translation>Holz der Deckbretter</translation>
    </message>
    <message>
        <source>Trim thickness</source>
        <translation>Holz der Deckbretter: Dicke</translation>
    </message>
    <message>
        <source>Trim width</source>
        <translation>Holz der Deckbretter: Breite</translation>
    </message>
    <message>
        <source>Turn left and right</source>
        <translation>Links und rechts vertauschen</translation>
    </message>
    <message>
        <source>Unit of lengths on the report.</source>
        <translation>Einheit der Längen im Bericht.</translation>
    </message>
    <message>
        <source>Vent roof</source>
        <translation>Reiterdach</translation>
    </message>
    <message>
        <source>Vents</source>
        <translation>Dachreiter</translation>
    </message>
    <message>
        <source>Vents along the ridge</source>
        <translation>Dachreiter längs des Firsts</translation>
    </message>
    <message>
        <source>Vents is 1, so the vent stands alone. Set Vents to how many share the ridge, and RidgeLength to the ridge's unbroken length; then run this command again.</source>
        <translation>Vents ist 1, also steht der Dachreiter allein. Setzen Sie Vents auf die Zahl derer, die sich den First teilen, und RidgeLength auf die ununterbrochene Länge des Firsts; dann führen Sie diesen Befehl noch einmal aus.</translation>
    </message>
    <message>
        <source>Verge</source>
        <translation>Ortgangüberstand</translation>
    </message>
    <message>
        <source>Weight of all vents on the ridge together.</source>
        <translation>Gewicht aller Dachreiter auf dem First zusammen.</translation>
    </message>
    <message>
        <source>Weight of the base.</source>
        <translation>Gewicht des Sockels.</translation>
    </message>
    <message>
        <source>Weight of the louver stage.</source>
        <translation>Gewicht des Lamellenabschnitts.</translation>
    </message>
    <message>
        <source>Weight of the parts that are left out, as drawn; no other weight has it.</source>
        <translation>Gewicht der weggelassenen Teile, wie gezeichnet; in keinem anderen Gewicht enthalten.</translation>
    </message>
    <message>
        <source>Weight of the roof stage, without its covering.</source>
        <translation>Gewicht des Dachabschnitts, ohne seine Deckung.</translation>
    </message>
    <message>
        <source>Weight of the vent, without covering, flashing and paint.</source>
        <translation>Gewicht des Dachreiters, ohne Deckung, Anschlüsse und Anstrich.</translation>
    </message>
    <message>
        <source>What closes the gables: cladding, or slats as in the panels.</source>
        <translation>Was die Giebel schließt: Verschalung, oder Lamellen wie in den Feldern.</translation>
    </message>
    <message>
        <source>What each person is to lift at most, in kg.</source>
        <translation>Was jede Person höchstens heben soll, in kg.</translation>
    </message>
    <message>
        <source>What follows</source>
        <translation>Was daraus folgt</translation>
    </message>
    <message>
        <source>What the last recompute found.</source>
        <translation>Was die letzte Neuberechnung vorfand.</translation>
    </message>
    <message>
        <source>What the parts' colours tell apart: the stock that they are cut from, or their kinds. A part that you have coloured yourself keeps its colour.</source>
        <translation>Was die Farben der Teile unterscheiden: das Holz, aus dem sie gesägt sind, oder ihre Arten. Ein Teil, das Sie selbst gefärbt haben, behält seine Farbe.</translation>
    </message>
    <message>
        <source>What the pitch's error opens up at the foot, left slope.</source>
        <translation>Was der Fehler der Neigung am Fuß klaffen lässt, linke Dachfläche.</translation>
    </message>
    <message>
        <source>What the pitch's error opens up at the foot, right slope.</source>
        <translation>Was der Fehler der Neigung am Fuß klaffen lässt, rechte Dachfläche.</translation>
    </message>
    <message>
        <source>What the shape was made from.</source>
        <translation>Woraus die Form gemacht wurde.</translation>
    </message>
    <message>
        <source>What the yard asks, in one currency, as stock and price for a metre, a foot or a piece: 2x4: 2.10/m; 1x6: 0.95/ft; plywood 1/2: 38 each. Gives a cost sheet.</source>
        <translation type="vanished">Was der Holzhändler verlangt, in einer Währung, als Holz und Preis für einen Meter, einen Fuß oder ein Stück: 2x4: 2.10/m; 1x6: 0.95/ft; plywood 1/2: 38 each. Ergibt eine Kostenaufstellung.</translation>
    </message>
    <message>
        <source>What the yard asks, in one currency, as stock and price for a metre, a foot, a piece or a length: 1x6: 0.95/ft; plywood 1/2: 38 each; 2x4: 8 ft = 4.20, 10 ft = 5.60. Gives a cost sheet; stock with a price for every length is bought at the least cost.</source>
        <translation>Was der Holzhandel verlangt, in einer Währung, als Holz und Preis für einen Meter, einen Fuß, ein Stück oder eine Länge: 1x6: 0.95/ft; plywood 1/2: 38 each; 2x4: 8 ft = 4.20, 10 ft = 5.60. Ergibt eine Kostenaufstellung; Holz mit einem Preis für jede Länge wird zu den geringsten Kosten gekauft.</translation>
    </message>
    <message>
        <source>What was hidden when the opening was made.</source>
        <translation>Was ausgeblendet wurde, als die Öffnung gemacht wurde.</translation>
    </message>
    <message>
        <source>What was picked has been deleted. Pick the roof again.</source>
        <translation>Was gewählt war, wurde gelöscht. Wählen Sie das Dach noch einmal.</translation>
    </message>
    <message>
        <source>What you cut off each end of a new stick, with the saw cut, to have it sound and square.</source>
        <translation>Was Sie samt Schnittfuge an jedem Ende einer neuen Stange abschneiden, damit es gesund und rechtwinklig ist.</translation>
    </message>
    <message>
        <source>Where AlongRidge counts from: the middle of the ridge (towards the front), its back end, or its front end, which the vent's +X axis looks at.</source>
        <translation>Von wo AlongRidge zählt: von der Mitte des Firsts (nach vorn), von seinem hinteren oder von seinem vorderen Ende, zu dem die +X-Achse des Dachreiters schaut.</translation>
    </message>
    <message>
        <source>Where drops are read: from the vent's axis along the ridge.</source>
        <translation>Wo Lotmaße abgelesen werden: von der Achse des Dachreiters längs des Firsts.</translation>
    </message>
    <message>
        <source>Where drops are read: from the vent's axis square to the ridge.</source>
        <translation>Wo Lotmaße abgelesen werden: von der Achse des Dachreiters rechtwinklig zum First.</translation>
    </message>
    <message>
        <source>Where each piece's board frame stands in the vent.</source>
        <translation>Wo das Brettsystem jedes Stücks im Dachreiter steht.</translation>
    </message>
    <message>
        <source>Where the picture was put, to tell whether you moved it.</source>
        <translation>Wohin das Bild gesetzt wurde, um zu erkennen, ob Sie es verschoben haben.</translation>
    </message>
    <message>
        <source>Where the vent stood when it last took its seat.</source>
        <translation>Wo der Dachreiter stand, als er zuletzt seinen Platz einnahm.</translation>
    </message>
    <message>
        <source>Whether a side or a corner of the plan looks along the ridge.</source>
        <translation>Ob eine Seite oder eine Ecke des Grundrisses längs des Firsts schaut.</translation>
    </message>
    <message>
        <source>Whether the ridge board and the boards of RidgeBoards are left standing in the opening, or an opening that would cut one is refused.</source>
        <translation>Ob das Firstholz und die Hölzer von RidgeBoards in der Öffnung stehen bleiben, oder eine Öffnung, die eines davon schneiden würde, abgelehnt wird.</translation>
    </message>
    <message>
        <source>Whether the ridge of a gable roof runs along the barn's or across it.</source>
        <translation>Ob der First eines Satteldachs längs des Scheunenfirsts läuft oder quer dazu.</translation>
    </message>
    <message>
        <source>Whether the vent stands astride the ridge, or as a curb wholly on the left slope (a flat roof is a slope of 0°); then heights count from the roof under the vent's axis.</source>
        <translation>Ob der Dachreiter rittlings auf dem First steht, oder als Aufsatz ganz auf der linken Dachfläche (ein Flachdach ist eine Neigung von 0°); dann zählen Höhen vom Dach unter der Achse des Dachreiters.</translation>
    </message>
    <message>
        <source>Which of the sheet's pictures this is.</source>
        <translation>Welches Bild des Blatts dies ist.</translation>
    </message>
    <message>
        <source>Which of the three is the least.</source>
        <translation>Welcher der drei der kleinste ist.</translation>
    </message>
    <message>
        <source>Which of the vent's sheets this is.</source>
        <translation>Welches Blatt des Dachreiters dies ist.</translation>
    </message>
    <message>
        <source>Which vent of the row this is, counted from the ridge's −X end.</source>
        <translation>Der wievielte der Reihe dieser Dachreiter ist, vom −X-Ende des Firsts gezählt.</translation>
    </message>
    <message>
        <source>Widest clear distance between rafters that the roof sheathing may bridge.</source>
        <translation>Größter lichter Abstand der Sparren, den die Dachschalung überspannen darf.</translation>
    </message>
    <message>
        <source>Widest spacing</source>
        <translation>Größter Abstand</translation>
    </message>
    <message>
        <source>Widest spacing of the slats, plumb; it leads where no number of slats is given.</source>
        <translation>Größter Abstand der Lamellen, lotrecht; er führt, wo keine Zahl von Lamellen angegeben ist.</translation>
    </message>
    <message>
        <source>Widest stock that your saw crosscuts.</source>
        <translation>Breitestes Holz, das Ihre Säge quer schneidet.</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Width of the barn's ridge cap, level, both slopes together.</source>
        <translation>Breite der Firsthaube der Scheune, waagerecht, beide Dachflächen zusammen.</translation>
    </message>
    <message>
        <source>Width of the building across the ridge; with the ridge length it gives the area of an open ridge, 2 in for each 10 ft of width.</source>
        <translation>Breite des Gebäudes quer zum First; mit der Firstlänge ergibt sie den Querschnitt eines offenen Firsts, 2 Zoll je 10 Fuß Breite.</translation>
    </message>
    <message>
        <source>Width of the vent over the cladding.</source>
        <translation>Breite des Dachreiters über die Verschalung.</translation>
    </message>
    <message>
        <source>Width of the vent's roof over the fascia; of a rectangle's the smaller.</source>
        <translation>Breite des Reiterdachs über die Stirnbretter; beim Rechteck die kleinere.</translation>
    </message>
    <message>
        <source>Width of the {stock}, as measured.</source>
        <translation>Gemessene Breite ({stock}).</translation>
    </message>
    <message>
        <source>Width of your saw's cut.</source>
        <translation>Breite des Schnitts Ihrer Säge.</translation>
    </message>
    <message>
        <source>Width rule</source>
        <translation>Breitenregel</translation>
    </message>
    <message>
        <source>Width that a corner board shows on each face.</source>
        <translation>Breite, die ein Eckbrett auf jeder Seite zeigt.</translation>
    </message>
    <message>
        <source>Width that a corner post shows on each face.</source>
        <translation>Breite, die ein Eckpfosten auf jeder Seite zeigt.</translation>
    </message>
    <message>
        <source>Wind speed</source>
        <translation>Windgeschwindigkeit</translation>
    </message>
    <message>
        <source>With several vents: from each end of the unbroken ridge to the axis of the nearest vent; between these the vents are evenly spaced. One vent stands in the middle.</source>
        <translation>Bei mehreren Dachreitern: von jedem Ende des ununterbrochenen Firsts bis zur Achse des nächsten Dachreiters; dazwischen sind die Dachreiter gleichmäßig verteilt. Ein einzelner Dachreiter steht in der Mitte.</translation>
    </message>
    <message>
        <source>Wood left on the legs' feet, plumb, to scribe them to a twisted roof or a ridge that sags.</source>
        <translation>Holzzugabe an den Füßen der Stiele, lotrecht, um sie einem verwundenen Dach oder einem durchhängenden First anzureißen.</translation>
    </message>
    <message>
        <source>Write</source>
        <translation>Schreiben</translation>
    </message>
    <message>
        <source>Write a number.</source>
        <translation>Schreiben Sie eine Zahl.</translation>
    </message>
    <message>
        <source>Write the vent's cut list into a spreadsheet in the document, or bring it up to date; what you have written right of it stays with its cut.</source>
        <translation>Die Schnittliste des Dachreiters in eine Tabelle im Dokument schreiben oder sie auf den neuesten Stand bringen; was Sie rechts daneben geschrieben haben, bleibt bei seinem Schnitt.</translation>
    </message>
    <message>
        <source>Write the vent's cut list, saw settings and drawings to a folder: HTML, PDF, CSV and JSON.</source>
        <translation>Schnittliste, Sägeeinstellungen und Zeichnungen des Dachreiters in einen Ordner schreiben: HTML, PDF, CSV und JSON.</translation>
    </message>
    <message>
        <source>Write yes or no.</source>
        <translation>Schreiben Sie ja oder nein (yes, no).</translation>
    </message>
    <message>
        <source>a common at mid-side stands where the mast's bearer lies</source>
        <translation>wo der Mastträger liegt, steht in der Mitte der Seite ein Normalsparren</translation>
    </message>
    <message>
        <source>a common must stand at mid-side of a rectangle's short sides, to meet the ridge's end</source>
        <translation>in der Mitte der kurzen Seiten eines Rechtecks muss ein Normalsparren stehen, der auf das Ende des Firsts trifft</translation>
    </message>
    <message>
        <source>a count</source>
        <translation>eine Anzahl</translation>
    </message>
    <message>
        <source>a count is a whole number, 0 or more</source>
        <translation>eine Anzahl ist eine ganze Zahl, 0 oder mehr</translation>
    </message>
    <message>
        <source>a fraction without a unit may mean inches or {unit}, so write the unit</source>
        <translation>ein Bruch ohne Einheit kann Zoll oder {unit} bedeuten, also schreiben Sie die Einheit</translation>
    </message>
    <message>
        <source>a leg has only {leg} below its rail and needs {least_leg}</source>
        <translation>ein Stiel hat unter seinem Riegel nur {leg} und braucht {least_leg}</translation>
    </message>
    <message>
        <source>a leg would stand {free} below its lowest rail, and {frame_t} thick it may stand {most}</source>
        <translation>ein Stiel stünde {free} unter seinem untersten Riegel frei, und {frame_t} dick darf er {most} frei stehen</translation>
    </message>
    <message>
        <source>a length</source>
        <translation>eine Länge</translation>
    </message>
    <message>
        <source>a mark, such as B1L, or words of a part, its stock or size</source>
        <translation>ein Zeichen, etwa B1L, oder Wörter eines Teils, seines Holzes oder Maßes</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>a part that holds other objects</source>
        <translation>ein Part, das andere Objekte enthält</translation>
    </message>
    <message>
        <source>a plan has 4, 6 or 8 sides</source>
        <translation>ein Grundriss hat 4, 6 oder 8 Seiten</translation>
    </message>
    <message>
        <source>a post {has} thick must keep {mast_wood} of wood around the bore</source>
        <translation>ein {has} dicker Kaiserstiel muss um die Bohrung {mast_wood} Holz behalten</translation>
    </message>
    <message>
        <source>a relief over so low a cap cannot be sawn; it is {least_cap} deep at least</source>
        <translation>eine Ausklinkung über einer so niedrigen Haube lässt sich nicht sägen; sie ist mindestens {least_cap} tief</translation>
    </message>
    <message>
        <source>a sole on the eave side keeps only {left} of its width on so steep a roof and needs 20 mm</source>
        <translation>eine Schwelle der Traufseite behält auf einem so steilen Dach nur {left} ihrer Breite und braucht 20 mm</translation>
    </message>
    <message>
        <source>a stile {stile_t} thick must keep {dado_floor} behind it</source>
        <translation>eine {stile_t} dicke Wange muss dahinter {dado_floor} behalten</translation>
    </message>
    <message>
        <source>a text in it has half of a character (\ud800 to \udfff); take that out</source>
        <translation>ein Text darin hat ein halbes Zeichen (\ud800 bis \udfff); nehmen Sie es heraus</translation>
    </message>
    <message>
        <source>a weight</source>
        <translation>ein Gewicht</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>eine ganze Zahl</translation>
    </message>
    <message>
        <source>across</source>
        <translation>quer</translation>
    </message>
    <message>
        <source>along</source>
        <translation>längs</translation>
    </message>
    <message>
        <source>along the eave</source>
        <translation>längs der Traufe</translation>
    </message>
    <message>
        <source>always</source>
        <translation>immer</translation>
    </message>
    <message>
        <source>an angle</source>
        <translation>ein Winkel</translation>
    </message>
    <message>
        <source>an answer</source>
        <translation>eine Antwort</translation>
    </message>
    <message>
        <source>an area</source>
        <translation>eine Fläche</translation>
    </message>
    <message>
        <source>an endless number</source>
        <translation>eine endlose Zahl</translation>
    </message>
    <message>
        <source>an object without a shape</source>
        <translation>ein Objekt ohne Form</translation>
    </message>
    <message>
        <source>another</source>
        <translation>anderes Holz</translation>
    </message>
    <message>
        <source>as drawn:</source>
        <translation>wie gezeichnet:</translation>
    </message>
    <message>
        <source>as left</source>
        <translation>wie links</translation>
    </message>
    <message>
        <source>as the long faces</source>
        <translation>wie die langen Flächen</translation>
    </message>
    <message>
        <source>as the overhang: the break lies over the plate's edge</source>
        <translation>wie der Überstand: der Knick liegt über der Kante des Rähms</translation>
    </message>
    <message>
        <source>as the stock list says</source>
        <translation>wie die Holzliste sagt</translation>
    </message>
    <message>
        <source>as the width: a square</source>
        <translation>wie die Breite: ein Quadrat</translation>
    </message>
    <message>
        <source>at most</source>
        <translation>höchstens</translation>
    </message>
    <message>
        <source>automatic</source>
        <translation>automatisch</translation>
    </message>
    <message>
        <source>automatic: {value}</source>
        <translation>autom.: {value}</translation>
    </message>
    <message>
        <source>back</source>
        <translation>hinten</translation>
    </message>
    <message>
        <source>barge boards must be {need} wide to cover the ends of ridge and eaves, and the stock is {width}</source>
        <translation>Ortgangbretter müssen {need} breit sein, um die Enden von First und Traufen zu decken, und das Holz ist {width} breit</translation>
    </message>
    <message>
        <source>batten stock</source>
        <translation>Leistenholz</translation>
    </message>
    <message>
        <source>batten thickness</source>
        <translation>Dicke (Leistenholz)</translation>
    </message>
    <message>
        <source>batten width</source>
        <translation>Breite (Leistenholz)</translation>
    </message>
    <message>
        <source>battens {batten_w} wide would meet behind the screen; {most} is the widest</source>
        <translation>{batten_w} breite Leisten würden sich hinter dem Gitter berühren; {most} ist die größte Breite</translation>
    </message>
    <message>
        <source>board</source>
        <translation>Brett</translation>
    </message>
    <message>
        <source>boarded</source>
        <translation>verschalt</translation>
    </message>
    <message>
        <source>boards</source>
        <translation>Bretter</translation>
    </message>
    <message>
        <source>both level</source>
        <translation>beide waagerecht</translation>
    </message>
    <message>
        <source>butt</source>
        <translation>stumpf</translation>
    </message>
    <message>
        <source>by the floor or by the building's width, if either is given</source>
        <translation>nach dem Boden oder der Gebäudebreite, wenn eines davon angegeben ist</translation>
    </message>
    <message>
        <source>by the number of slats</source>
        <translation>nach der Zahl der Lamellen</translation>
    </message>
    <message>
        <source>by the width rule from the ridge length</source>
        <translation>nach der Breitenregel aus der Firstlänge</translation>
    </message>
    <message>
        <source>by the width rule from the ridge; it must be between {low} and {high}</source>
        <translation>nach der Breitenregel aus dem First; sie muss zwischen {low} und {high} liegen</translation>
    </message>
    <message>
        <source>centimetres</source>
        <translation>Zentimeter</translation>
    </message>
    <message>
        <source>cladding stock</source>
        <translation>Holz der Verschalung</translation>
    </message>
    <message>
        <source>cladding thickness</source>
        <translation>Dicke (Holz der Verschalung)</translation>
    </message>
    <message>
        <source>cladding width</source>
        <translation>Breite (Holz der Verschalung)</translation>
    </message>
    <message>
        <source>corner</source>
        <translation>Ecke</translation>
    </message>
    <message>
        <source>corner board stock</source>
        <translation>Holz der Eckbretter</translation>
    </message>
    <message>
        <source>corner board thickness</source>
        <translation>Dicke (Holz der Eckbretter)</translation>
    </message>
    <message>
        <source>corner board width</source>
        <translation>Breite (Holz der Eckbretter)</translation>
    </message>
    <message>
        <source>dados on both faces leave less than {dado_floor} of the mullion</source>
        <translation>Nuten auf beiden Seiten lassen vom Mittelpfosten weniger als {dado_floor}</translation>
    </message>
    <message>
        <source>diagonal side</source>
        <translation>Schrägseite</translation>
    </message>
    <message>
        <source>diagonal side {along} {across} ({axis})</source>
        <translation>Schrägseite {along} {across} ({axis})</translation>
    </message>
    <message>
        <source>dimension</source>
        <translation>Kantholz</translation>
    </message>
    <message>
        <source>drops are read from a ridge, and the vent sits on one slope</source>
        <translation>Lotmaße werden von einem First abgelesen, und der Dachreiter sitzt auf einer Dachfläche</translation>
    </message>
    <message>
        <source>eave side</source>
        <translation>Traufseite</translation>
    </message>
    <message>
        <source>every part of the vent is left out</source>
        <translation>jedes Teil des Dachreiters ist weggelassen</translation>
    </message>
    <message>
        <source>fascia stock</source>
        <translation>Holz der Stirnbretter</translation>
    </message>
    <message>
        <source>fascia thickness</source>
        <translation>Dicke (Holz der Stirnbretter)</translation>
    </message>
    <message>
        <source>fascia width</source>
        <translation>Breite (Holz der Stirnbretter)</translation>
    </message>
    <message>
        <source>feet</source>
        <translation>Fuß</translation>
    </message>
    <message>
        <source>flared hip</source>
        <translation>Walmdach mit Knick</translation>
    </message>
    <message>
        <source>frame stock</source>
        <translation>Rahmenholz</translation>
    </message>
    <message>
        <source>frame thickness</source>
        <translation>Dicke (Rahmenholz)</translation>
    </message>
    <message>
        <source>frame width</source>
        <translation>Breite (Rahmenholz)</translation>
    </message>
    <message>
        <source>from the faces' pitch</source>
        <translation>aus der Neigung der Flächen</translation>
    </message>
    <message>
        <source>front</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>ft-in</source>
        <translation>ft-in</translation>
    </message>
    <message>
        <source>full-size templates to print and glue, and each as a DXF file</source>
        <translation type="vanished">Schablonen in wahrer Größe zum Drucken und Aufkleben, jede auch als DXF-Datei</translation>
    </message>
    <message>
        <source>full-size templates: sheets to print and glue together, and each as a DXF file</source>
        <translation>Schablonen in wahrer Größe: Blätter zum Drucken und Zusammenkleben, und jede als DXF-Datei</translation>
    </message>
    <message>
        <source>gable</source>
        <translation>Satteldach</translation>
    </message>
    <message>
        <source>gable side</source>
        <translation>Giebelseite</translation>
    </message>
    <message>
        <source>gable side +X{front}</source>
        <translation>Giebelseite +X{front}</translation>
    </message>
    <message>
        <source>gable side −X{back}</source>
        <translation>Giebelseite −X{back}</translation>
    </message>
    <message>
        <source>half a vent's share of the ridge</source>
        <translation>der halbe Anteil eines Dachreiters am First</translation>
    </message>
    <message>
        <source>half the faces' pitch</source>
        <translation>die halbe Neigung der Flächen</translation>
    </message>
    <message>
        <source>half the overhang</source>
        <translation>der halbe Überstand</translation>
    </message>
    <message>
        <source>hip</source>
        <translation>Walmdach</translation>
    </message>
    <message>
        <source>hips</source>
        <translation>Gratsparren</translation>
    </message>
    <message>
        <source>hips and commons</source>
        <translation>Grat- und Normalsparren</translation>
    </message>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
    <message>
        <source>in one plane</source>
        <translation>in einer Ebene</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>inches are halved, and halved again</source>
        <translation>Zoll werden halbiert und wieder halbiert</translation>
    </message>
    <message>
        <source>inside the frame it leaves {hold} for the gussets of its corners, and they need {least_bearing}</source>
        <translation>innerhalb des Rahmens lässt es {hold} für die Ecklaschen, und sie brauchen {least_bearing}</translation>
    </message>
    <message>
        <source>is level, as an eave is</source>
        <translation>ist waagerecht wie eine Traufe</translation>
    </message>
    <message>
        <source>it bears on {bearing} of the frame and needs {least_bearing}</source>
        <translation>es liegt {bearing} auf dem Rahmen auf und braucht {least_bearing}</translation>
    </message>
    <message>
        <source>it can be read in two ways</source>
        <translation>das lässt sich auf zweierlei Art lesen</translation>
    </message>
    <message>
        <source>it can have three decimals at most</source>
        <translation>er darf höchstens drei Nachkommastellen haben</translation>
    </message>
    <message>
        <source>it cannot be wider than its stock, {wide}</source>
        <translation>sie kann nicht breiter sein als ihr Holz, {wide}</translation>
    </message>
    <message>
        <source>it cannot be wider than the frame stock, {frame_w}</source>
        <translation>sie kann nicht breiter sein als das Rahmenholz, {frame_w}</translation>
    </message>
    <message>
        <source>it has a character that cannot be printed, U+{number}</source>
        <translation>er hat ein Zeichen, das nicht gedruckt werden kann, U+{number}</translation>
    </message>
    <message>
        <source>it has two prices</source>
        <translation>es hat zwei Preise</translation>
    </message>
    <message>
        <source>it has {count} characters, and at most {most} are printed</source>
        <translation>er hat {count} Zeichen, und höchstens {most} werden gedruckt</translation>
    </message>
    <message>
        <source>it is a pipe or a device; give a file</source>
        <translation>es ist eine Pipe oder ein Gerät; geben Sie eine Datei an</translation>
    </message>
    <message>
        <source>it is a {form}, and the cladding is to be {cladding}</source>
        <translation>die Form ist {form}, und als Verschalung ist {cladding} gewählt</translation>
    </message>
    <message>
        <source>it is a {form}, and the use needs a {forms}</source>
        <translation>die Form ist {form}, und die Verwendung braucht {forms}</translation>
    </message>
    <message>
        <source>it is a {form}, {section}, and the vent is laid out from “{usual}”, a {usual_form}, {usual_section}</source>
        <translation>die Form ist {form}, {section}, und der Dachreiter ist nach „{usual}“ ausgelegt, Form {usual_form}, {usual_section}</translation>
    </message>
    <message>
        <source>it is larger than {most} MB</source>
        <translation>sie ist größer als {most} MB</translation>
    </message>
    <message>
        <source>it is nested more than {most} deep</source>
        <translation>sie ist mehr als {most} Ebenen tief verschachtelt</translation>
    </message>
    <message>
        <source>it is no item of the stock list</source>
        <translation>es steht nicht in der Holzliste</translation>
    </message>
    <message>
        <source>it is no offcut's length</source>
        <translation>das ist keine Länge eines Reststücks</translation>
    </message>
    <message>
        <source>it is no stick of the stock list</source>
        <translation>es ist keine Stange der Holzliste</translation>
    </message>
    <message>
        <source>it is no text</source>
        <translation>es ist kein Text</translation>
    </message>
    <message>
        <source>it is not a length</source>
        <translation>das ist keine Länge</translation>
    </message>
    <message>
        <source>it is not a price</source>
        <translation>das ist kein Preis</translation>
    </message>
    <message>
        <source>it is not a stock with its lengths</source>
        <translation>das ist kein Holz mit seinen Längen</translation>
    </message>
    <message>
        <source>it is not a stock with its price</source>
        <translation>das ist kein Holz mit seinem Preis</translation>
    </message>
    <message>
        <source>it is not measured, and the drops at the other corners mean nothing without it</source>
        <translation>es ist nicht gemessen, und die Lotmaße an den anderen Ecken sagen ohne es nichts</translation>
    </message>
    <message>
        <source>it is not written in UTF-8; save it in that encoding</source>
        <translation>sie ist nicht in UTF-8 geschrieben; speichern Sie sie in dieser Kodierung</translation>
    </message>
    <message>
        <source>it is {count} characters long and at most {most} are read</source>
        <translation>es ist {count} Zeichen lang, und höchstens {most} werden gelesen</translation>
    </message>
    <message>
        <source>it leaves a ridge of {length}, and two commons side by side need {least}</source>
        <translation>sie lässt einen First von {length}, und zwei Normalsparren nebeneinander brauchen {least}</translation>
    </message>
    <message>
        <source>it leaves {room} under the first slat's dado, and {dado_wood} is the least</source>
        <translation>sie lässt {room} unter der Nut der ersten Lamelle, und {dado_wood} ist das wenigste</translation>
    </message>
    <message>
        <source>it lies on another machine, and nothing is fetched from a network; copy it beside your file</source>
        <translation>sie liegt auf einem anderen Rechner, und nichts wird aus einem Netz geholt; kopieren Sie sie neben Ihre Datei</translation>
    </message>
    <message>
        <source>it makes a slope of {pitch:.1f}°, and a slope must be less than {steepest:g}°</source>
        <translation>es ergibt eine Dachfläche von {pitch:.1f}°, und eine Dachfläche muss weniger als {steepest:g}° haben</translation>
    </message>
    <message>
        <source>it may not be less than 0</source>
        <translation>es darf nicht kleiner als 0 sein</translation>
    </message>
    <message>
        <source>it must be at least {low} and {bound} {high}{zero}</source>
        <translation>der Wert muss mindestens {low} und {bound} {high} sein{zero}</translation>
    </message>
    <message>
        <source>it must be one of {choices}</source>
        <translation>der Wert muss einer von diesen sein: {choices}</translation>
    </message>
    <message>
        <source>it must be text</source>
        <translation>es muss Text sein</translation>
    </message>
    <message>
        <source>it must be yes or no</source>
        <translation>es muss ja oder nein sein</translation>
    </message>
    <message>
        <source>it must be {kind}</source>
        <translation>es muss {kind} sein</translation>
    </message>
    <message>
        <source>it must be {words}</source>
        <translation>es muss {words} sein</translation>
    </message>
    <message>
        <source>it must be {words}, and FreeCAD keeps the unit of the expression that was there before</source>
        <translation>es muss {words} sein, und FreeCAD behält die Einheit des Ausdrucks, der vorher da war</translation>
    </message>
    <message>
        <source>it must lie between the soles and the top rail, {top} to {rail_under}</source>
        <translation>er muss zwischen den Schwellen und dem Oberriegel liegen, {top} bis {rail_under}</translation>
    </message>
    <message>
        <source>it reaches the middle of the ridge, {ridge} from each end, and {count} vents stand between</source>
        <translation>er reicht bis zur Mitte des Firsts, {ridge} von jedem Ende, und {count} Dachreiter stehen dazwischen</translation>
    </message>
    <message>
        <source>it would cover the stile, {stile_t} thick, and close the louvers</source>
        <translation>sie würde die {stile_t} dicke Wange überdecken und die Lamellen schließen</translation>
    </message>
    <message>
        <source>its expression has no value ({reason})</source>
        <translation>sein Ausdruck hat keinen Wert ({reason})</translation>
    </message>
    <message>
        <source>its roof's ridge would be {length} long, and two commons side by side need {least}</source>
        <translation>der First seines Dachs wäre {length} lang, und zwei Normalsparren nebeneinander brauchen {least}</translation>
    </message>
    <message>
        <source>its step is cut from frame stock {frame_w} × {frame_t}</source>
        <translation>seine Mastspur wird aus Rahmenholz {frame_w} × {frame_t} gesägt</translation>
    </message>
    <message>
        <source>its {count} offcuts are more than {most}</source>
        <translation>seine {count} Reststücke sind mehr als {most}</translation>
    </message>
    <message>
        <source>king post stock</source>
        <translation>Holz des Kaiserstiels</translation>
    </message>
    <message>
        <source>king post thickness</source>
        <translation>Dicke (Holz des Kaiserstiels)</translation>
    </message>
    <message>
        <source>king post width</source>
        <translation>Breite (Holz des Kaiserstiels)</translation>
    </message>
    <message>
        <source>labels to cut out, one a piece: mark, name, stage, hand, face, up, edge to the gauge</source>
        <translation>Etiketten zum Ausschneiden, eines je Stück: Kennzeichen, Name, Stufe, Hand, Seite, oben, Kante zum Anschlag</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>left eave side (+Y)</source>
        <translation>linke Traufseite (+Y)</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>weggelassen</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>less than</source>
        <translation>weniger als</translation>
    </message>
    <message>
        <source>level</source>
        <translation>waagerecht</translation>
    </message>
    <message>
        <source>long</source>
        <translation>lang</translation>
    </message>
    <message>
        <source>louvered</source>
        <translation>mit Lamellen</translation>
    </message>
    <message>
        <source>louvers</source>
        <translation>Lamellen</translation>
    </message>
    <message>
        <source>marks with commas, such as B1L, L7R</source>
        <translation>Zeichen mit Kommas, etwa B1L, L7R</translation>
    </message>
    <message>
        <source>mesh</source>
        <translation>Gewebe</translation>
    </message>
    <message>
        <source>metres</source>
        <translation>Meter</translation>
    </message>
    <message>
        <source>middle</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>millimetres</source>
        <translation>Millimeter</translation>
    </message>
    <message>
        <source>minutes and seconds must be less than 60</source>
        <translation>Minuten und Sekunden müssen kleiner als 60 sein</translation>
    </message>
    <message>
        <source>mitred</source>
        <translation>Gehrung</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>neighbouring panels would touch inside the corner beyond {most} (post face less screen and batten)</source>
        <translation>benachbarte Felder würden sich über {most} hinaus innen in der Ecke berühren (Pfostenansicht weniger Gitter und Leiste)</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nie</translation>
    </message>
    <message>
        <source>no mast</source>
        <translation>kein Mast</translation>
    </message>
    <message>
        <source>no ridge length is given to size the vent by</source>
        <translation>es ist keine Firstlänge angegeben, um den Dachreiter zu bemessen</translation>
    </message>
    <message>
        <source>no second rail</source>
        <translation>kein zweiter Riegel</translation>
    </message>
    <message>
        <source>no slope</source>
        <translation>keine Dachfläche</translation>
    </message>
    <message>
        <source>not given</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>on your left, at the vent's +X end, when you look along +X</source>
        <translation>zu Ihrer Linken, am +X-Ende des Dachreiters, wenn Sie längs +X schauen</translation>
    </message>
    <message>
        <source>on your left, at the vent's −X end, when you look along +X</source>
        <translation>zu Ihrer Linken, am −X-Ende des Dachreiters, wenn Sie längs +X schauen</translation>
    </message>
    <message>
        <source>on your right, at the vent's +X end, when you look along +X</source>
        <translation>zu Ihrer Rechten, am +X-Ende des Dachreiters, wenn Sie längs +X schauen</translation>
    </message>
    <message>
        <source>on your right, at the vent's −X end, when you look along +X</source>
        <translation>zu Ihrer Rechten, am −X-Ende des Dachreiters, wenn Sie längs +X schauen</translation>
    </message>
    <message>
        <source>one slope</source>
        <translation>eine Dachfläche</translation>
    </message>
    <message>
        <source>only a plan of 4 sides can be a rectangle, and this has {sides}</source>
        <translation>nur ein Grundriss mit 4 Seiten kann ein Rechteck sein, und dieser hat {sides}</translation>
    </message>
    <message>
        <source>only a plan of 4 sides can have gables, and this has {sides}</source>
        <translation>nur ein Grundriss mit 4 Seiten kann Giebel haben, und dieser hat {sides}</translation>
    </message>
    <message>
        <source>only the hip roof of a rectangle has end faces</source>
        <translation>nur das Walmdach eines Rechtecks hat eigene Walmflächen</translation>
    </message>
    <message>
        <source>parallel, at {pitch:.1f}°</source>
        <translation>parallel, mit {pitch:.1f}°</translation>
    </message>
    <message>
        <source>plate stock</source>
        <translation>Rähmholz</translation>
    </message>
    <message>
        <source>plate thickness</source>
        <translation>Dicke (Rähmholz)</translation>
    </message>
    <message>
        <source>plate width</source>
        <translation>Breite (Rähmholz)</translation>
    </message>
    <message>
        <source>plumb</source>
        <translation>lotrecht</translation>
    </message>
    <message>
        <source>post</source>
        <translation>Pfosten</translation>
    </message>
    <message>
        <source>posts and stiles leave {clear} clear between them and must leave {least_clear}</source>
        <translation>Pfosten und Wangen lassen {clear} zwischen sich frei und müssen {least_clear} lassen</translation>
    </message>
    <message>
        <source>rafter stock</source>
        <translation>Sparrenholz</translation>
    </message>
    <message>
        <source>rafter thickness</source>
        <translation>Dicke (Sparrenholz)</translation>
    </message>
    <message>
        <source>rafter width</source>
        <translation>Breite (Sparrenholz)</translation>
    </message>
    <message>
        <source>rain rising inward at {rain_angle:g}° passes between the slats</source>
        <translation>Regen, der mit {rain_angle:g}° nach innen steigt, kommt zwischen den Lamellen durch</translation>
    </message>
    <message>
        <source>raking</source>
        <translation>schräg</translation>
    </message>
    <message>
        <source>ridge</source>
        <translation>First</translation>
    </message>
    <message>
        <source>ridge stock</source>
        <translation>Firstholz</translation>
    </message>
    <message>
        <source>ridge thickness</source>
        <translation>Dicke (Firstholz)</translation>
    </message>
    <message>
        <source>ridge width</source>
        <translation>Breite (Firstholz)</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>right eave side (−Y)</source>
        <translation>rechte Traufseite (−Y)</translation>
    </message>
    <message>
        <source>ring stock</source>
        <translation>Holz des Tropfkranzes</translation>
    </message>
    <message>
        <source>ring thickness</source>
        <translation>Dicke (Holz des Tropfkranzes)</translation>
    </message>
    <message>
        <source>ring width</source>
        <translation>Breite (Holz des Tropfkranzes)</translation>
    </message>
    <message>
        <source>ripped to {width}</source>
        <translation>auf {width} aufgetrennt</translation>
    </message>
    <message>
        <source>roof opening</source>
        <translation>Dachöffnung</translation>
    </message>
    <message>
        <source>sawn to both pitches the rafters keep {rafter_d} of their depth above the break and must keep {least_rafter}</source>
        <translation>in beiden Neigungen gesägt, behalten die Sparren über dem Knick {rafter_d} ihrer Höhe und müssen {least_rafter} behalten</translation>
    </message>
    <message>
        <source>screen stock</source>
        <translation>Gittergewebe</translation>
    </message>
    <message>
        <source>screen thickness</source>
        <translation>Dicke (Gittergewebe)</translation>
    </message>
    <message>
        <source>sheathing stock</source>
        <translation>Platte der Dachschalung</translation>
    </message>
    <message>
        <source>sheathing thickness</source>
        <translation>Dicke (Platte der Dachschalung)</translation>
    </message>
    <message>
        <source>sheet</source>
        <translation>Platte</translation>
    </message>
    <message>
        <source>sheet covering: side pans instead of steps</source>
        <translation>Blechdeckung: durchgehende Seitenbleche statt Stufen</translation>
    </message>
    <message>
        <source>shop drawings: general arrangement, a sheet a stage, sheets of parts</source>
        <translation>Werkzeichnungen: Übersicht, ein Blatt je Stufe, Blätter der Teile</translation>
    </message>
    <message>
        <source>side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>slat stock</source>
        <translation>Lamellenholz</translation>
    </message>
    <message>
        <source>slat thickness</source>
        <translation>Dicke (Lamellenholz)</translation>
    </message>
    <message>
        <source>slat width</source>
        <translation>Breite (Lamellenholz)</translation>
    </message>
    <message>
        <source>slats need a blank {blank} wide and it is {width}</source>
        <translation>Lamellen brauchen einen {blank} breiten Rohling, und das Holz ist {width} breit</translation>
    </message>
    <message>
        <source>slopes {tilt:.1f}°, as a verge does</source>
        <translation>ist um {tilt:.1f}° geneigt wie ein Ortgang</translation>
    </message>
    <message>
        <source>so that no rafter is notched deeper than a third</source>
        <translation>so dass kein Sparren tiefer als ein Drittel ausgekerbt wird</translation>
    </message>
    <message>
        <source>soffit stock</source>
        <translation>Holz der Untersicht</translation>
    </message>
    <message>
        <source>soffit thickness</source>
        <translation>Dicke (Holz der Untersicht)</translation>
    </message>
    <message>
        <source>soffit width</source>
        <translation>Breite (Holz der Untersicht)</translation>
    </message>
    <message>
        <source>square</source>
        <translation>rechtwinklig</translation>
    </message>
    <message>
        <source>stile stock</source>
        <translation>Wangenholz</translation>
    </message>
    <message>
        <source>stile thickness</source>
        <translation>Dicke (Wangenholz)</translation>
    </message>
    <message>
        <source>stile width</source>
        <translation>Breite (Wangenholz)</translation>
    </message>
    <message>
        <source>stiles are cut from stock {width} wide</source>
        <translation>die Wangen werden aus {width} breitem Holz gesägt</translation>
    </message>
    <message>
        <source>take-offs: primer and paint, screen, screws, covering, sealant, flashing, mast</source>
        <translation>Massenauszüge: Grundierung und Farbe, Gitter, Schrauben, Deckung, Dichtstoff, Anschlussbleche, Mast</translation>
    </message>
    <message>
        <source>the assembly book: steps with pictures, fastening plan, bench blocks, fixing to the roof</source>
        <translation>das Montagebuch: Schritte mit Bildern, Verschraubungsplan, Werkbankklötze, Befestigung am Dach</translation>
    </message>
    <message>
        <source>the bed mould is {nailer} wide and the stock {width}</source>
        <translation>die Unterleiste ist {nailer} breit und das Holz {width}</translation>
    </message>
    <message>
        <source>the bench sheet: dados and story sticks, laps, rips by stock, holes, test pairs, order of cuts</source>
        <translation>das Werkbankblatt: Nuten und Maßlatten, Überblattungen, Längsschnitte nach Holz, Löcher, Probepaare, Reihenfolge der Schnitte</translation>
    </message>
    <message>
        <source>the boards of both corners would meet in the middle of a side {side} long</source>
        <translation>die Bretter beider Ecken würden sich in der Mitte einer {side} langen Seite treffen</translation>
    </message>
    <message>
        <source>the break must lie below the middle of the rafters</source>
        <translation>der Knick muss unterhalb der Mitte der Sparren liegen</translation>
    </message>
    <message>
        <source>the buying list: what to buy, and what is cut from each stick and sheet</source>
        <translation>die Einkaufsliste: was zu kaufen ist und was aus jeder Stange und Platte geschnitten wird</translation>
    </message>
    <message>
        <source>the cap would lie under the legs, which stand {inner} from the ridge</source>
        <translation>die Haube läge unter den Stielen, die {inner} vom First stehen</translation>
    </message>
    <message>
        <source>the checks: dry fit, rain, air, movement of the wood, what errors at the saw do</source>
        <translation>die Prüfungen: Probezusammenbau, Regen, Luft, Arbeiten des Holzes, was Fehler an der Säge bewirken</translation>
    </message>
    <message>
        <source>the cladding under it ends {head} above the joint of the stages and must reach {upstand}</source>
        <translation>die Verschalung darunter endet {head} über der Fuge der Abschnitte und muss {upstand} erreichen</translation>
    </message>
    <message>
        <source>the common</source>
        <translation>der Normalsparren</translation>
    </message>
    <message>
        <source>the corner board stock's width, 140 mm at most</source>
        <translation>die Breite des Eckbrettholzes, höchstens 140 mm</translation>
    </message>
    <message>
        <source>the cut report: every part, its cuts and joints, set-ups for the saw</source>
        <translation>der Schnittbericht: jedes Teil, seine Schnitte und Verbindungen, Einstellungen der Säge</translation>
    </message>
    <message>
        <source>the eave of a flared roof must be {least_break:g}° flatter than its faces at {pitch:.1f}°</source>
        <translation>die Traufe eines geknickten Dachs muss um {least_break:g}° flacher sein als seine Flächen mit {pitch:.1f}°</translation>
    </message>
    <message>
        <source>the eave-side board is narrower by its thickness and needs 20 mm</source>
        <translation>das Brett der Traufseite ist um seine Dicke schmaler und braucht 20 mm</translation>
    </message>
    <message>
        <source>the eave-side plank is narrower by the frame's thickness {frame_t} and needs 20 mm</source>
        <translation>die Bohle der Traufseite ist um die Dicke des Rahmens, {frame_t}, schmaler und braucht 20 mm</translation>
    </message>
    <message>
        <source>the fascia would hang {low} below the top of the louvers and hide them</source>
        <translation>das Stirnbrett hinge {low} unter die Oberkante der Lamellen und verdeckte sie</translation>
    </message>
    <message>
        <source>the fewest that hide the sky at the rain angle</source>
        <translation>die wenigsten, die beim Regenwinkel den Himmel verdecken</translation>
    </message>
    <message>
        <source>the fraction {top}/{bottom} divides by nought; give it a bottom of 1 or more</source>
        <translation>der Bruch {top}/{bottom} teilt durch null; geben Sie ihm einen Nenner von 1 oder mehr</translation>
    </message>
    <message>
        <source>the fraction {top}/{bottom} is not less than 1; if it is meant, write {cure}</source>
        <translation>der Bruch {top}/{bottom} ist nicht kleiner als 1; ist er so gemeint, schreiben Sie {cure}</translation>
    </message>
    <message>
        <source>the frame stock's width; 0.15 of a side at most with 6 or 8 sides</source>
        <translation>die Breite des Rahmenholzes; bei 6 oder 8 Seiten höchstens 0,15 einer Seite</translation>
    </message>
    <message>
        <source>the hip</source>
        <translation>der Gratsparren</translation>
    </message>
    <message>
        <source>the jack or common</source>
        <translation>der Schifter oder Normalsparren</translation>
    </message>
    <message>
        <source>the key “{key}” stands twice in one object; keep one</source>
        <translation>der Schlüssel „{key}“ steht zweimal in einem Objekt; behalten Sie einen</translation>
    </message>
    <message>
        <source>the king post would be {length} long</source>
        <translation>der Kaiserstiel wäre {length} lang</translation>
    </message>
    <message>
        <source>the legs leave {clear} between them, and the opening in the roof must be {least_opening} wide</source>
        <translation>die Stiele lassen {clear} zwischen sich, und die Öffnung im Dach muss {least_opening} breit sein</translation>
    </message>
    <message>
        <source>the lift plan: weights, centres, people, slings, wind</source>
        <translation>der Hebeplan: Gewichte, Schwerpunkte, Leute, Anschlagmittel, Wind</translation>
    </message>
    <message>
        <source>the list's usual stock for this use</source>
        <translation>das in der Liste übliche Holz für diese Verwendung</translation>
    </message>
    <message>
        <source>the longer of length and width may be twice the other, here {least} to {most}</source>
        <translation>das längere von Länge und Breite darf das Doppelte des anderen sein, hier {least} bis {most}</translation>
    </message>
    <message>
        <source>the minutes must be a whole number when seconds follow</source>
        <translation>die Minuten müssen eine ganze Zahl sein, wenn Sekunden folgen</translation>
    </message>
    <message>
        <source>the mullion is cut from frame stock {frame_w} wide</source>
        <translation>der Mittelpfosten wird aus {frame_w} breitem Rahmenholz gesägt</translation>
    </message>
    <message>
        <source>the opening is narrower than the louvers and holds the air back. Set a smaller opening margin, or count on the opening's area.</source>
        <translation>die Öffnung ist enger als die Lamellen und hält die Luft zurück. Setzen Sie einen kleineren Randabstand der Öffnung, oder rechnen Sie mit der Fläche der Öffnung.</translation>
    </message>
    <message>
        <source>the opening is no narrower than the louvers; narrowest on the air's way: {narrowest}.</source>
        <translation>die Öffnung ist nicht enger als die Lamellen; engste Stelle auf dem Weg der Luft: {narrowest}.</translation>
    </message>
    <message>
        <source>the points and commas in {text} do not fit; write it with one point</source>
        <translation>die Punkte und Kommas in {text} passen nicht zusammen; schreiben Sie es mit einem Punkt</translation>
    </message>
    <message>
        <source>the rafters are only {deepest} deep plumb and would not reach the soffit</source>
        <translation>die Sparren sind lotrecht nur {deepest} hoch und würden die Untersicht nicht erreichen</translation>
    </message>
    <message>
        <source>the ridge board</source>
        <translation>das Firstholz</translation>
    </message>
    <message>
        <source>the ridge must pass between the legs, {most} from the axis at most</source>
        <translation>der First muss zwischen den Stielen durchgehen, höchstens {most} von der Achse</translation>
    </message>
    <message>
        <source>the ring's inner edge would stand {proud} above the sill and hold water</source>
        <translation>die Innenkante des Tropfkranzes stünde {proud} über der Sohlbank und hielte Wasser zurück</translation>
    </message>
    <message>
        <source>the ring's nose would hang down below the base's top rail</source>
        <translation>die Nase des Tropfkranzes hinge unter den Oberriegel des Sockels hinab</translation>
    </message>
    <message>
        <source>the run after the mark is nought, and a pitch needs a run of more than 0</source>
        <translation>das Grundmaß nach dem Zeichen ist null, und eine Neigung braucht ein Grundmaß von mehr als 0</translation>
    </message>
    <message>
        <source>the screen hangs {low} below the rail's top, and the panel is shallower than the rail, {frame_t}</source>
        <translation>das Gitter hängt {low} unter die Oberkante des Riegels, und das Feld ist weniger tief als der Riegel, {frame_t}</translation>
    </message>
    <message>
        <source>the sheathing leaves the mast's bearer less than {least_bearing} of plate</source>
        <translation>die Schalung lässt dem Mastträger weniger als {least_bearing} Rähm</translation>
    </message>
    <message>
        <source>the sill needs a blank {blank} wide and its stock is {width}</source>
        <translation>die Sohlbank braucht einen {blank} breiten Rohling, und ihr Holz ist {width} breit</translation>
    </message>
    <message>
        <source>the slats' slope</source>
        <translation>die Neigung der Lamellen</translation>
    </message>
    <message>
        <source>the slats' slope, 45° at most</source>
        <translation>die Neigung der Lamellen, höchstens 45°</translation>
    </message>
    <message>
        <source>the slope drops {twist} further there than at its other end, and a twist may be {most_twist} at most</source>
        <translation>die Dachfläche fällt dort {twist} mehr als an ihrem anderen Ende, und eine Verwindung darf höchstens {most_twist} betragen</translation>
    </message>
    <message>
        <source>the soffit would lie {nailer} below the plate's top and leave no nailer</source>
        <translation>die Untersicht läge {nailer} unter der Oberkante des Rähms und ließe kein Nagelholz</translation>
    </message>
    <message>
        <source>the soles reach {top} above the ridge and would meet the top rail at {rail_under}</source>
        <translation>die Schwellen reichen {top} über den First und träfen den Oberriegel bei {rail_under}</translation>
    </message>
    <message>
        <source>the stock list has {own} for “{name}”, and what differs by more than {share:g} % is another stock</source>
        <translation>die Holzliste hat {own} für „{name}“, und was um mehr als {share:g} % abweicht, ist ein anderes Holz</translation>
    </message>
    <message>
        <source>the stock list “{name}” has no such item</source>
        <translation>die Holzliste „{name}“ hat keinen solchen Eintrag</translation>
    </message>
    <message>
        <source>the vent's roof reaches {roof} from its axis and would stand out over the end of the ridge</source>
        <translation>das Dach des Dachreiters reicht {roof} von seiner Achse und stünde über das Ende des Firsts vor</translation>
    </message>
    <message>
        <source>the {big} must be a whole number when {small} follow; write it in one unit</source>
        <translation>die {big} müssen eine ganze Zahl sein, wenn {small} folgen; schreiben Sie es in einer Einheit</translation>
    </message>
    <message>
        <source>the {count} vents would stand {spacing} from axis to axis and need {least}</source>
        <translation>die {count} Dachreiter stünden {spacing} von Achse zu Achse und brauchen {least}</translation>
    </message>
    <message>
        <source>there are {count} numbers in it, and a length has one or two</source>
        <translation>es sind {count} Zahlen darin, und eine Länge hat eine oder zwei</translation>
    </message>
    <message>
        <source>there is no king post under a ridge to carry it</source>
        <translation>unter einem First gibt es keinen Kaiserstiel, der ihn trägt</translation>
    </message>
    <message>
        <source>there is no room for a sill and one slat between the rails</source>
        <translation>zwischen den Riegeln ist kein Platz für eine Sohlbank und eine Lamelle</translation>
    </message>
    <message>
        <source>there is no room for bearer and step under the king post</source>
        <translation>unter dem Kaiserstiel ist kein Platz für Träger und Mastspur</translation>
    </message>
    <message>
        <source>there is no room for it between the soles and the top rail</source>
        <translation>zwischen den Schwellen und dem Oberriegel ist kein Platz für ihn</translation>
    </message>
    <message>
        <source>there is no such kind of part</source>
        <translation>eine solche Art von Teil gibt es nicht</translation>
    </message>
    <message>
        <source>there is no {element} any more. Pick the roof again.</source>
        <translation>es gibt kein {element} mehr. Wählen Sie das Dach noch einmal.</translation>
    </message>
    <message>
        <source>there is room for {gable_slats} slats of {least_slat} or more under the peak; {least_gable_slats} are the least</source>
        <translation>unter der Spitze ist Platz für {gable_slats} Lamellen von {least_slat} oder mehr; {least_gable_slats} sind das wenigste</translation>
    </message>
    <message>
        <source>they would stand {bay} apart; {least_bay} is the least</source>
        <translation>sie stünden {bay} auseinander; {least_bay} ist das wenigste</translation>
    </message>
    <message>
        <source>they would stand {spacing} from axis to axis and need {least}, for their width with 300 mm between and for their roofs</source>
        <translation>sie stünden {spacing} von Achse zu Achse und brauchen {least}, für ihre Breite mit 300 mm dazwischen und für ihre Dächer</translation>
    </message>
    <message>
        <source>thick</source>
        <translation>dick</translation>
    </message>
    <message>
        <source>thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>thicknessed to {thickness}</source>
        <translation>auf {thickness} ausgehobelt</translation>
    </message>
    <message>
        <source>throat</source>
        <translation>Hals</translation>
    </message>
    <message>
        <source>to cover the rafters' plumb cuts the ridge must be {deep} deep, and the stock is {width} wide</source>
        <translation>um die Lotschnitte der Sparren zu decken, muss der First {deep} hoch sein, und das Holz ist {width} breit</translation>
    </message>
    <message>
        <source>trim stock</source>
        <translation>Holz der Deckbretter</translation>
    </message>
    <message>
        <source>trim thickness</source>
        <translation>Dicke (Holz der Deckbretter)</translation>
    </message>
    <message>
        <source>trim width</source>
        <translation>Breite (Holz der Deckbretter)</translation>
    </message>
    <message>
        <source>two numbers are read only as feet and inches or metres and cm or mm</source>
        <translation>zwei Zahlen werden nur als Fuß und Zoll oder Meter und cm oder mm gelesen</translation>
    </message>
    <message>
        <source>up the slope</source>
        <translation>die Dachfläche hinauf</translation>
    </message>
    <message>
        <source>upright</source>
        <translation>aufrecht</translation>
    </message>
    <message>
        <source>usual</source>
        <translation>üblich</translation>
    </message>
    <message>
        <source>usual: {name}</source>
        <translation>üblich: {name}</translation>
    </message>
    <message>
        <source>wide</source>
        <translation>breit</translation>
    </message>
    <message>
        <source>width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>with the seat depth it takes {depth} of a sole, more than half its width</source>
        <translation>mit der Einlasstiefe nimmt sie {depth} von einer Schwelle, mehr als die Hälfte ihrer Breite</translation>
    </message>
    <message>
        <source>without a unit</source>
        <translation>ohne Einheit</translation>
    </message>
    <message>
        <source>write figures and a unit, like 40 mm, 3 1/2 in or 5'-3 1/2"</source>
        <translation>schreiben Sie Ziffern und eine Einheit, etwa 40 mm, 3 1/2 in oder 5'-3 1/2"</translation>
    </message>
    <message>
        <source>write figures and a unit, like {example}</source>
        <translation>schreiben Sie Ziffern und eine Einheit, etwa {example}</translation>
    </message>
    <message>
        <source>write it with figures, like 3.5 or 3 1/2</source>
        <translation>schreiben Sie es mit Ziffern, etwa 3.5 oder 3 1/2</translation>
    </message>
    <message>
        <source>write yes or no</source>
        <translation>schreiben Sie ja oder nein (yes, no)</translation>
    </message>
    <message>
        <source>yes or no</source>
        <translation>ja oder nein (yes, no)</translation>
    </message>
    <message>
        <source>{apart:.0f} mm apart</source>
        <translation>{apart:.0f} mm auseinander</translation>
    </message>
    <message>
        <source>{count} files are written. A double click opens one.</source>
        <translation>{count} Dateien sind geschrieben. Ein Doppelklick öffnet eine.</translation>
    </message>
    <message>
        <source>{count} slopes are picked. Pick the two that meet in the ridge.</source>
        <translation>{count} Dachflächen sind gewählt. Wählen Sie die beiden, die sich im First treffen.</translation>
    </message>
    <message>
        <source>{count} vents share the ridge and are spaced along it</source>
        <translation>{count} Dachreiter teilen sich den First und werden darauf verteilt</translation>
    </message>
    <message>
        <source>{element} is curved, and a ridge is straight. {needed}.</source>
        <translation>{element} ist gekrümmt, und ein First ist gerade. {needed}.</translation>
    </message>
    <message>
        <source>{element} is curved, and a vent is cut to plane slopes. Pick plane faces, or draw planes that touch the roof where the vent stands, and pick those.</source>
        <translation>{element} ist gekrümmt, und ein Dachreiter wird nach ebenen Dachflächen gesägt. Wählen Sie ebene Flächen, oder zeichnen Sie Ebenen, die das Dach dort berühren, wo der Dachreiter steht, und wählen Sie die.</translation>
    </message>
    <message>
        <source>{element} looks down: it is the underside. Pick the faces of the covering, which look up.</source>
        <translation>{element} schaut nach unten: das ist die Unterseite. Wählen Sie die Flächen der Deckung, die nach oben schauen.</translation>
    </message>
    <message>
        <source>{element} stands at {pitch:.1f}°, as a wall or a gable does; a roof is less than {steepest:g}°. Pick the slopes, which look up.</source>
        <translation>{element} steht mit {pitch:.1f}°, wie eine Wand oder ein Giebel; ein Dach hat weniger als {steepest:g}°. Wählen Sie die Dachflächen, die nach oben schauen.</translation>
    </message>
    <message>
        <source>{label} is empty. Give it a value.</source>
        <translation>{label}: das Feld ist leer. Geben Sie einen Wert an.</translation>
    </message>
    <message>
        <source>{low} to less than {high}.</source>
        <translation>{low} bis weniger als {high}.</translation>
    </message>
    <message>
        <source>{low} to {high}.</source>
        <translation>{low} bis {high}.</translation>
    </message>
    <message>
        <source>{marks} would be cut otherwise today. {older}</source>
        <translation>{marks} würden heute anders gesägt. {older}</translation>
    </message>
    <message>
        <source>{mark} ({name}) must be {given} {what}, and it is sold {most} {what}</source>
        <translation>{mark} ({name}) muss {given} {what} sein, und es gibt das Holz {most} {what}</translation>
    </message>
    <message>
        <source>{mark} is drawn {drawn}: the piece is as it should be to {same_size:g} mm. Give the size that is wrong.</source>
        <translation>{mark} ist mit {drawn} gezeichnet: das Stück ist auf {same_size:g} mm so, wie es sein soll. Geben Sie das Maß an, das falsch ist.</translation>
    </message>
    <message>
        <source>{mm:g} mm is not a size that is sold. Give a length above 0 mm and at most {longest:g} mm.</source>
        <translation type="vanished">{mm:g} mm ist kein Maß, das verkauft wird. Geben Sie eine Länge über 0 mm und höchstens {longest:g} mm an.</translation>
    </message>
    <message>
        <source>{mm:g} mm is not a size that is sold. Give at least {least:g} mm and at most {most:g} mm.</source>
        <translation>{mm:g} mm ist kein Maß, das verkauft wird. Geben Sie mindestens {least:g} mm und höchstens {most:g} mm an.</translation>
    </message>
    <message>
        <source>{name} is {real:g} mm: it must be more than 0 mm. Measure the piece again.</source>
        <translation>{name} ist {real:g} mm: es muss mehr als 0 mm sein. Messen Sie das Stück noch einmal.</translation>
    </message>
    <message>
        <source>{name} is {real}: {mark} is cut from “{stock}”, which is {most} at most. Measure the piece again{cure_text}.</source>
        <translation>{name} ist {real}: {mark} wird aus „{stock}“ gesägt, das höchstens {most} misst. Messen Sie das Stück noch einmal{cure_text}.</translation>
    </message>
    <message>
        <source>{number} already has decimals and cannot have a fraction after it</source>
        <translation>{number} hat schon Nachkommastellen, und danach kann kein Bruch stehen</translation>
    </message>
    <message>
        <source>{pitch} slope</source>
        <translation>Dachfläche {pitch}</translation>
    </message>
    <message>
        <source>{rafter} has less than {least_bearing} of seat on the plate</source>
        <translation>{rafter} hat weniger als {least_bearing} Auflager auf dem Rähm</translation>
    </message>
    <message>
        <source>{rafter} is notched {notch}, deeper than a third of its depth, {most}</source>
        <translation>{rafter} wird {notch} ausgekerbt, tiefer als ein Drittel seiner Höhe, {most}</translation>
    </message>
    <message>
        <source>{small:g} {small_unit} make 1 {big_unit} or more; carry them over</source>
        <translation>{small:g} {small_unit} sind 1 {big_unit} oder mehr; rechnen Sie um</translation>
    </message>
    <message>
        <source>{text} may mean {one} or {other}, so write the one that is meant</source>
        <translation>{text} kann {one} oder {other} bedeuten, also schreiben Sie, was gemeint ist</translation>
    </message>
    <message>
        <source>{value} (from the expression “{text}”)</source>
        <translation>{value} (aus dem Ausdruck „{text}“)</translation>
    </message>
    <message>
        <source>{vent}, number {number}</source>
        <translation>{vent}, Nummer {number}</translation>
    </message>
    <message>
        <source>{where} is {value}: {limit}. {cure}</source>
        <translation>{where} ist {value}: {limit}. {cure}</translation>
    </message>
    <message>
        <source>{why} would collide on a post {has} thick; it must be {need}</source>
        <translation>{why} würden auf einem {has} dicken Kaiserstiel zusammenstoßen; er muss {need} dick sein</translation>
    </message>
    <message>
        <source>{wood} of wood and a gap of {gap} are left between slats; {dado_wood} and {least_gap} are the least</source>
        <translation>{wood} Holz und eine Fuge von {gap} bleiben zwischen den Lamellen; {dado_wood} und {least_gap} sind das wenigste</translation>
    </message>
    <message>
        <source>“error” is {reading:g}{makes}; it must be at least 0, and the pitch may be off by at most {largest_error:g}°. Measure again more closely.</source>
        <translation>„error“ ist {reading:g}{makes}; es muss mindestens 0 sein, und die Neigung darf um höchstens {largest_error:g}° falsch sein. Messen Sie noch einmal genauer.</translation>
    </message>
    <message>
        <source>“error” is {tape}, which on so short a run turns the pitch by {error}; at most {largest_error:g}° can be used. Measure a longer run.</source>
        <translation>„error“ ist {tape}, was bei so kurzem Grundmaß die Neigung um {error} dreht; höchstens {largest_error:g}° sind brauchbar. Messen Sie auf größerer Länge.</translation>
    </message>
    <message>
        <source>“gable”</source>
        <translation>„Satteldach“</translation>
    </message>
    <message>
        <source>“louvered”</source>
        <translation>„mit Lamellen“</translation>
    </message>
    <message>
        <source>“ridge_angle” and both slopes are given, and they may disagree. Give the angle and one slope, or both slopes.</source>
        <translation>„ridge_angle“ und beide Dachflächen sind angegeben und können einander widersprechen. Geben Sie den Winkel und eine Dachfläche an, oder beide Dachflächen.</translation>
    </message>
    <message>
        <source>“ridge_angle” is {included}, which with a {side} slope of {slope} leaves {other} for the other slope; that must be at least 0° and less than {steepest:g}°. Measure both again.</source>
        <translation>„ridge_angle“ ist {included}, was mit einer Neigung {side} von {slope} für die andere Dachfläche {other} lässt; das muss mindestens 0° und weniger als {steepest:g}° sein. Messen Sie beides noch einmal.</translation>
    </message>
    <message>
        <source>“rise_left” and “run_left” are missing. Give them; the right slope alone is not enough.</source>
        <translation>„rise_left“ und „run_left“ fehlen. Geben Sie sie an; die rechte Dachfläche allein genügt nicht.</translation>
    </message>
    <message>
        <source>“rise_{side}” is {rise:g} mm; it must be 0 mm or more. Measure it up from the level.</source>
        <translation>„rise_{side}“ ist {rise:g} mm; es muss 0 mm oder mehr sein. Messen Sie von der Waagerechten hinauf.</translation>
    </message>
    <message>
        <source>“run_{side}” is {run:g} mm; it must be more than the tape's error of {error:g} mm. Measure a longer run.</source>
        <translation>„run_{side}“ ist {run:g} mm; es muss mehr als der Fehler des Maßbands von {error:g} mm sein. Messen Sie auf größerer Länge.</translation>
    </message>
    <message>
        <source>“slope_left” is missing. Give it or the ridge_angle; the right slope alone is not enough.</source>
        <translation>„slope_left“ fehlt. Geben Sie es oder ridge_angle an; die rechte Dachfläche allein genügt nicht.</translation>
    </message>
    <message>
        <source>“{element}” is neither a face nor an edge. {needed}.</source>
        <translation>„{element}“ ist weder eine Fläche noch eine Kante. {needed}.</translation>
    </message>
    <message>
        <source>“{element}” is not there any more. Pick the roof again.</source>
        <translation>„{element}“ ist nicht mehr da. Wählen Sie das Dach noch einmal.</translation>
    </message>
    <message>
        <source>“{form}” is not a form; known are {forms}.</source>
        <translation>„{form}“ ist keine Form; bekannt sind {forms}.</translation>
    </message>
    <message>
        <source>“{key}” gives a slope of {pitch}; it must be at least 0° and less than {steepest:g}°. Measure again from the level.</source>
        <translation>„{key}“ ergibt eine Neigung von {pitch}; sie muss mindestens 0° und weniger als {steepest:g}° sein. Messen Sie noch einmal von der Waagerechten.</translation>
    </message>
    <message>
        <source>“{key}” is not a key here; known are {known}.</source>
        <translation>„{key}“ ist hier kein Schlüssel; bekannt sind {known}.</translation>
    </message>
    <message>
        <source>“{key}” is not a reading; known are {keys}.</source>
        <translation>„{key}“ ist keine Ablesung; bekannt sind {keys}.</translation>
    </message>
    <message>
        <source>“{key}” is {angle}; it must be more than {over:g}° and at most {most:g}°. Measure the angle between the two slopes, from underneath.</source>
        <translation>„{key}“ ist {angle}; es muss mehr als {over:g}° und höchstens {most:g}° sein. Messen Sie den Winkel zwischen den beiden Dachflächen, von unten.</translation>
    </message>
    <message>
        <source>“{key}”: {error}</source>
        <translation>„{key}“: {error}</translation>
    </message>
    <message>
        <source>“{label}” has no faces, and a roof is read from its faces. {needed}.</source>
        <translation>„{label}“ hat keine Flächen, und ein Dach wird von seinen Flächen abgelesen. {needed}.</translation>
    </message>
    <message>
        <source>“{label}” is a mesh, which has no plane faces. Make a shape from it in the Part workbench, refine it and convert it to a solid, or draw the two slopes on it; then pick those.</source>
        <translation>„{label}“ ist ein Netz, das keine ebenen Flächen hat. Machen Sie im Arbeitsbereich Part eine Form daraus, verfeinern Sie sie und wandeln Sie sie in einen Festkörper um, oder zeichnen Sie die beiden Dachflächen darauf; dann wählen Sie diese.</translation>
    </message>
    <message>
        <source>“{label}” is {what}. {needed}.</source>
        <translation>„{label}“ ist {what}. {needed}.</translation>
    </message>
    <message>
        <source>“{lacks}” is missing, and “{has}” means nothing without it. Give both.</source>
        <translation>„{lacks}“ fehlt, und „{has}“ sagt ohne es nichts. Geben Sie beide an.</translation>
    </message>
    <message>
        <source>“{mark}” came out wrong in all its pieces. Name only others that are cut already.</source>
        <translation>„{mark}“ ist in allen seinen Stücken falsch geworden. Nennen Sie nur andere, die schon gesägt sind.</translation>
    </message>
    <message>
        <source>“{mark}” is left out of this vent: it is not made here. Choose one of: {parts}.</source>
        <translation>„{mark}“ ist bei diesem Dachreiter weggelassen: es wird hier nicht gemacht. Wählen Sie eines von: {parts}.</translation>
    </message>
    <message>
        <source>“{mark}” is not a mark of this vent. Choose one of: {parts}.</source>
        <translation>„{mark}“ ist kein Zeichen dieses Dachreiters. Wählen Sie eines von: {parts}.</translation>
    </message>
    <message>
        <source>“{name}”</source>
        <translation>„{name}“</translation>
    </message>
    <message>
        <source>“{name}” belongs to no vent any more and keeps its last shape. Delete it, or copy whole vents only.</source>
        <translation>„{name}“ gehört zu keinem Dachreiter mehr und behält seine letzte Form. Löschen Sie es, oder kopieren Sie nur ganze Dachreiter.</translation>
    </message>
    <message>
        <source>“{name}” belongs to “{vent}” and follows its parameters. Hide it, or delete the whole vent.</source>
        <translation>„{name}“ gehört zu „{vent}“ und folgt dessen Parametern. Blenden Sie es aus, oder löschen Sie den ganzen Dachreiter.</translation>
    </message>
    <message>
        <source>“{name}” has its opening already: “{opening}”. Change the properties of that, or delete it first.</source>
        <translation>„{name}“ hat seine Öffnung schon: „{opening}“. Ändern Sie deren Eigenschaften, oder löschen Sie sie zuerst.</translation>
    </message>
    <message>
        <source>“{name}” is a {form}, and the use needs a {forms}. Name another item.</source>
        <translation>„{name}“ hat die Form {form}, und die Verwendung braucht {forms}. Nennen Sie einen anderen Eintrag.</translation>
    </message>
    <message>
        <source>“{name}” is in neither list. Add it to the items or name another.</source>
        <translation>„{name}“ ist in keiner der beiden Listen. Fügen Sie es den Einträgen hinzu, oder nennen Sie einen anderen.</translation>
    </message>
    <message>
        <source>“{name}” is in the document “{document}”, and the vent is not. Put a link to it into the vent's document, and pick that, or make the vent there.</source>
        <translation>„{name}“ ist im Dokument „{document}“ und der Dachreiter nicht. Setzen Sie einen Link darauf in das Dokument des Dachreiters und wählen Sie den, oder machen Sie den Dachreiter dort.</translation>
    </message>
    <message>
        <source>“{name}” is made from the vent “{vent}” or shows it, so the vent cannot follow it. Pick the roof as it is without the vent, before the opening is cut into it.</source>
        <translation>„{name}“ ist aus dem Dachreiter „{vent}“ gemacht oder zeigt ihn, also kann der Dachreiter ihm nicht folgen. Wählen Sie das Dach, wie es ohne den Dachreiter ist, bevor die Öffnung hineingeschnitten wird.</translation>
    </message>
    <message>
        <source>“{name}” is not a parameter</source>
        <translation>„{name}“ ist kein Parameter</translation>
    </message>
    <message>
        <source>“{name}” is not a shipped list; known are {bases}.</source>
        <translation>„{name}“ ist keine mitgelieferte Liste; bekannt sind {bases}.</translation>
    </message>
    <message>
        <source>“{name}” is not in the stock list. Choose one of: {names}.</source>
        <translation>„{name}“ ist nicht in der Holzliste. Wählen Sie eines von: {names}.</translation>
    </message>
    <message>
        <source>“{name}” is not the name of an item. Write it as text.</source>
        <translation>„{name}“ ist nicht der Name eines Eintrags. Schreiben Sie ihn als Text.</translation>
    </message>
    <message>
        <source>“{name}” stands free, so there is no roof to cut. Pick a roof for it with Edit vent, or delete the opening.</source>
        <translation>„{name}“ steht frei, also gibt es kein Dach zu schneiden. Wählen Sie ihm mit „Dachreiter ändern“ ein Dach, oder löschen Sie die Öffnung.</translation>
    </message>
    <message>
        <source>“{name}” stands {times} times in the list. Give each item a name of its own.</source>
        <translation>„{name}“ steht {times}-mal in der Liste. Geben Sie jedem Eintrag einen eigenen Namen.</translation>
    </message>
    <message>
        <source>“{name}” was taken off RidgeBoards: it is made from this opening, or holds it.</source>
        <translation>„{name}“ wurde aus RidgeBoards genommen: es ist aus dieser Öffnung gemacht oder enthält sie.</translation>
    </message>
    <message>
        <source>“{name}” was written by a newer Louverwright (schema {its}; this one knows {ours}). It keeps its last shape; install the newer Louverwright to change it.</source>
        <translation>„{name}“ wurde von einem neueren Louverwright geschrieben (Schema {its}; dieses kennt {ours}). Es behält seine letzte Form; installieren Sie das neuere Louverwright, um es zu ändern.</translation>
    </message>
    <message>
        <source>“{name}” was written by a newer Louverwright. It keeps its last shape; install the newer Louverwright to change it.</source>
        <translation>„{name}“ wurde von einem neueren Louverwright geschrieben. Es behält seine letzte Form; installieren Sie das neuere Louverwright, um es zu ändern.</translation>
    </message>
    <message>
        <source>“{name}”, which is not to be cut, has no faces. Take it off the list RidgeBoards, and put the drawn board itself there.</source>
        <translation>„{name}“, das nicht geschnitten werden soll, hat keine Flächen. Nehmen Sie es aus der Liste RidgeBoards, und setzen Sie das gezeichnete Holz selbst hinein.</translation>
    </message>
    <message>
        <source>“{name}”: one slope of {pitch}.</source>
        <translation>„{name}“: eine Dachfläche mit {pitch}.</translation>
    </message>
    <message>
        <source>“{name}”: {left} left, {right} right, a ridge of {ridge}.</source>
        <translation>„{name}“: {left} links, {right} rechts, ein First von {ridge}.</translation>
    </message>
    <message>
        <source>“{text}” is not {what} that can be read: {why}.</source>
        <translation>„{text}“ lässt sich nicht lesen; gebraucht wird {what}: {why}.</translation>
    </message>
    <message>
        <source>“{use}” is not a use; known are {uses}.</source>
        <translation>„{use}“ ist keine Verwendung; bekannt sind {uses}.</translation>
    </message>
    <message>
        <source>“{value}” is not a length. Write millimetres, or a text with its unit.</source>
        <translation>„{value}“ ist keine Länge. Schreiben Sie Millimeter, oder einen Text mit seiner Einheit.</translation>
    </message>
    <message>
        <source>“{value}” is not a number. Write figures, or a text with its unit.</source>
        <translation>„{value}“ ist keine Zahl. Schreiben Sie Ziffern, oder einen Text mit seiner Einheit.</translation>
    </message>
    <message>
        <source>“{value}” is not a reading. Write a number, or a text with its unit.</source>
        <translation>„{value}“ ist keine Ablesung. Schreiben Sie eine Zahl, oder einen Text mit seiner Einheit.</translation>
    </message>
    <message>
        <source>“{value}” is not text. Put it in quotes.</source>
        <translation>„{value}“ ist kein Text. Setzen Sie es in Anführungszeichen.</translation>
    </message>
    <message>
        <source>“{vent}” stands on a roof that was read before. {error}</source>
        <translation>„{vent}“ steht auf einem Dach, das früher abgelesen wurde. {error}</translation>
    </message>
</context>
<context>
    <name>App::Property</name>
    <message>
        <source>A middle stile; automatic: where the clear width passes the slats' span.</source>
        <translation>Ein Mittelpfosten; automatisch: wo die lichte Breite die Spannweite der Lamellen überschreitet.</translation>
    </message>
    <message>
        <source>A note for the shop, printed on the part's sheet and in the cut list.</source>
        <translation>Eine Notiz für die Werkstatt, auf dem Blatt des Teils und in der Schnittliste gedruckt.</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Area of the opening in plan, without what is left standing; of one vent, and of several the least.</source>
        <translation>Fläche der Öffnung im Grundriss, ohne was darin stehen bleibt; eines Dachreiters, von mehreren die kleinste.</translation>
    </message>
    <message>
        <source>Area of the opening in the roof, level; ridge board and rafters that stay take from it.</source>
        <translation>Fläche der Öffnung im Dach, waagerecht; Firstholz und Sparren, die bleiben, gehen davon ab.</translation>
    </message>
    <message>
        <source>Area of the vent's roof to be covered.</source>
        <translation>Zu deckende Fläche des Reiterdachs.</translation>
    </message>
    <message>
        <source>As measured</source>
        <translation>Wie gemessen</translation>
    </message>
    <message>
        <source>Barn roof</source>
        <translation>Scheunendach</translation>
    </message>
    <message>
        <source>Battens that hold the screen. Empty: the list's usual stock for this use.</source>
        <translation>Leisten, die das Gitter halten. Leer: das in der Liste übliche Holz für diese Verwendung.</translation>
    </message>
    <message>
        <source>Cap plates, laid flat. Empty: the list's usual stock for this use.</source>
        <translation>Kopfrähme, flach verlegt. Leer: das in der Liste übliche Holz für diese Verwendung.</translation>
    </message>
    <message>
        <source>Cladding</source>
        <translation>Verschalung</translation>
    </message>
    <message>
        <source>Cladding: a sheet, or a board for board cladding. Empty: the list's usual stock for this use.</source>
        <translation>Verschalung: eine Platte, oder ein Brett für Bretterschalung. Leer: das in der Liste übliche Holz für diese Verwendung.</translation>
    </message>
    <message>
        <source>Clear area inside the base frame and the panels.</source>
        <translation>Lichte Fläche innerhalb von Sockelrahmen und Feldern.</translation>
    </message>
    <message>
        <source>Clear gap between slats, square to them.</source>
        <translation>Lichte Fuge zwischen den Lamellen, rechtwinklig zu ihnen.</translation>
    </message>
    <message>
        <source>Clearances</source>
        <translation>Spielräume</translation>
    </message>
    <message>
        <source>Coats of paint over the primer. 0 to 6.</source>
        <translation>Deckanstriche auf der Grundierung. 0 bis 6.</translation>
    </message>
    <message>
        <source>Coats of primer. 0 to 4.</source>
        <translation>Anstriche mit Grundierung. 0 bis 4.</translation>
    </message>
    <message>
        <source>Corner boards of the base. Empty: the list's usual stock for this use.</source>
        <translation>Eckbretter des Sockels. Leer: das in der Liste übliche Holz für diese Verwendung.</translation>
    </message>
    <message>
        <source>Depth of a louver panel, which is the width of its stiles. 40 mm to 250 mm.</source>
        <translation>Tiefe eines Lamellenfelds, gleich der Breite seiner Wangen. 40 mm bis 250 mm.</translation>
    </message>
    <message>
        <source>Depth of the dados that take the slats. 3 mm to 25 mm.</source>
        <translation>Tiefe der Nuten, in denen die Lamellen sitzen. 3 mm bis 25 mm.</translation>
    </message>
    <message>
        <source>Design wind speed of the place in m/s, as the code there gives it (three-second gust). 20.0 to 90.0. 0: not given.</source>
        <translation>Bemessungswindgeschwindigkeit des Ortes in m/s, wie die dortige Norm sie angibt (Drei-Sekunden-Böe). 20.0 bis 90.0. 0: nicht angegeben.</translation>
    </message>
    <message>
        <source>Diameter of the mast through the roof for a vane or finial; 0 for none. 15 mm to 120 mm. 0: no mast.</source>
        <translation>Durchmesser des Masts durch das Dach für eine Wetterfahne oder Dachspitze; 0 für keinen. 15 mm bis 120 mm. 0: kein Mast.</translation>
    </message>
    <message>
        <source>Different marks.</source>
        <translation>Verschiedene Zeichen.</translation>
    </message>
    <message>
        <source>Direction of the roof sheathing's face grain.</source>
        <translation>Richtung der Decklagenfaser der Dachschalung.</translation>
    </message>
    <message>
        <source>Distance of the roof opening's edge from the inside of the legs. 0 mm to 300 mm.</source>
        <translation>Abstand des Rands der Dachöffnung von der Innenseite der Stiele. 0 mm bis 300 mm.</translation>
    </message>
    <message>
        <source>Drip ring. Empty: the list's usual stock for this use.</source>
        <translation>Tropfkranz. Leer: das in der Liste übliche Holz für diese Verwendung.</translation>
    </message>
    <message>
        <source>Fascia and bed mould. Empty: the list's usual stock for this use.</source>
        <translation>Stirnbrett und Unterleiste. Leer: das in der Liste übliche Holz für diese Verwendung.</translation>
    </message>
    <message>
        <source>Floor that the vents together air, in square metres. 0.0 to 100000.0. 0: not given.</source>
        <translation>Bodenfläche, die die Dachreiter zusammen lüften, in Quadratmetern. 0.0 bis 100000.0. 0: nicht angegeben.</translation>
    </message>
    <message>
        <source>Form of the vent's roof: hipped on every side; hipped with a kicked eave, two pitches a face; or two faces that end in gables.</source>
        <translation>Form des Reiterdachs: auf jeder Seite abgewalmt; abgewalmt mit geknickter Traufe, zwei Neigungen je Fläche; oder zwei Flächen mit Giebeln.</translation>
    </message>
    <message>
        <source>Frame</source>
        <translation>Rahmen</translation>
    </message>
    <message>
        <source>Free area of one vent's louvers.</source>
        <translation>Freier Querschnitt der Lamellen eines Dachreiters.</translation>
    </message>
    <message>
        <source>Free area wanted from this vent; 0 where no target is set.</source>
        <translation>Verlangter freier Querschnitt dieses Dachreiters; 0, wo keiner verlangt ist.</translation>
    </message>
    <message>
        <source>From axis to axis of the vents along the ridge; 0 for one vent.</source>
        <translation>Von Achse zu Achse der Dachreiter längs des Firsts; 0 bei einem Dachreiter.</translation>
    </message>
    <message>
        <source>From slat to slat, plumb.</source>
        <translation>Von Lamelle zu Lamelle, lotrecht.</translation>
    </message>
    <message>
        <source>From the gables' cladding to the back of the barge boards, level. 30 mm to 400 mm. 0: half the overhang.</source>
        <translation>Von der Giebelverschalung bis zur Rückseite der Ortgangbretter, waagerecht. 30 mm bis 400 mm. 0: der halbe Überstand.</translation>
    </message>
    <message>
        <source>From the plate's edge to the rafters' tails, level. 40 mm to 600 mm.</source>
        <translation>Von der Außenkante des Rähms bis zu den Sparrenköpfen, waagerecht. 40 mm bis 600 mm.</translation>
    </message>
    <message>
        <source>From the rafters' tails up to the break of a flared roof, level. 40 mm to 1200 mm. 0: as the overhang: the break lies over the plate's edge.</source>
        <translation>Von den Sparrenköpfen bis hinauf zum Dachknick, waagerecht. 40 mm bis 1200 mm. 0: wie der Überstand: der Knick liegt über der Kante des Rähms.</translation>
    </message>
    <message>
        <source>From the ridge to the roof's peak.</source>
        <translation>Vom First bis zur Dachspitze.</translation>
    </message>
    <message>
        <source>Gap all round where the louver stage drops inside the cladding. 1 mm to 10 mm.</source>
        <translation>Spielraum ringsum, wo der Lamellenabschnitt in der Verschalung steckt. 1 mm bis 10 mm.</translation>
    </message>
    <message>
        <source>Gap between a louver panel and the posts and rail around it. 0.5 mm to 6 mm.</source>
        <translation>Spielraum zwischen einem Lamellenfeld und den Pfosten und Riegeln um es. 0.5 mm bis 6 mm.</translation>
    </message>
    <message>
        <source>Gap between cladding boards. 0 mm to 20 mm.</source>
        <translation>Fuge zwischen den Brettern der Verschalung. 0 mm bis 20 mm.</translation>
    </message>
    <message>
        <source>Gap between the drip ring and the cladding and corner boards under it. 1 mm to 10 mm.</source>
        <translation>Spielraum zwischen dem Tropfkranz und Verschalung und Eckbrettern darunter. 1 mm bis 10 mm.</translation>
    </message>
    <message>
        <source>Height above the ridge of the base's second rail on the gable sides (its lower edge). 0 mm to 2000 mm. 0: no second rail.</source>
        <translation>Höhe des zweiten Riegels der Giebelseiten des Sockels über dem First (seine Unterkante). 0 mm bis 2000 mm. 0: kein zweiter Riegel.</translation>
    </message>
    <message>
        <source>Height of the base's top above the ridge. 150 mm to 2000 mm. 0: 0.3 of the width; 150 mm and what soles and rail need at least.</source>
        <translation>Höhe der Oberkante des Sockels über dem First. 150 mm bis 2000 mm. 0: 0,3 der Breite; mindestens 150 mm und was Schwellen und Riegel brauchen.</translation>
    </message>
    <message>
        <source>Height of the centre of gravity above the ridge.</source>
        <translation>Höhe des Schwerpunkts über dem First.</translation>
    </message>
    <message>
        <source>Height of the louver stage's frame.</source>
        <translation>Höhe des Rahmens des Lamellenabschnitts.</translation>
    </message>
    <message>
        <source>Height of the louver stage's frame. 250 mm to 3000 mm. 0: 0.6 of the width.</source>
        <translation>Höhe des Rahmens des Lamellenabschnitts. 250 mm bis 3000 mm. 0: 0,6 der Breite.</translation>
    </message>
    <message>
        <source>Hips, jacks and commons. Empty: the list's usual stock for this use.</source>
        <translation>Gratsparren, Schifter und Normalsparren. Leer: das in der Liste übliche Holz für diese Verwendung.</translation>
    </message>
    <message>
        <source>How deep the opening is cut under the roof's surface, plumb. 0: through the roof's own thickness, 600 mm at most.</source>
        <translation>Wie tief die Öffnung unter die Dachoberfläche geschnitten wird, lotrecht. 0: durch die Dicke des Dachs, höchstens 600 mm.</translation>
    </message>
    <message>
        <source>How deep the opening is cut, plumb.</source>
        <translation>Wie tief die Öffnung geschnitten ist, lotrecht.</translation>
    </message>
    <message>
        <source>How far legs and soles sit below the roof's finished surface, square to the slope: 0 on the covering, the covering's thickness on the deck. 0 mm to 300 mm.</source>
        <translation>Wie tief Stiele und Schwellen unter der fertigen Dachoberfläche sitzen, rechtwinklig zur Dachfläche: 0 auf der Deckung, die Dicke der Deckung auf der Schalung. 0 mm bis 300 mm.</translation>
    </message>
    <message>
        <source>How far slats overlap at the rain angle.</source>
        <translation>Wie weit die Lamellen einander beim Regenwinkel überdecken.</translation>
    </message>
    <message>
        <source>How far the barn's ridge cap stands above its covering, plumb; soles and cladding are relieved over it. 0 if the cap is taken away under the vent. 0 mm to 150 mm.</source>
        <translation>Wie hoch die Firsthaube der Scheune über ihrer Deckung steht, lotrecht; Schwellen und Verschalung sind darüber ausgeklinkt. 0, wenn die Haube unter dem Dachreiter entfernt wird. 0 mm bis 150 mm.</translation>
    </message>
    <message>
        <source>How far the drip ring reaches beyond the corner boards. 10 mm to 150 mm.</source>
        <translation>Wie weit der Tropfkranz über die Eckbretter vorsteht. 10 mm bis 150 mm.</translation>
    </message>
    <message>
        <source>How far the measured pitch may be off; the report says what it opens up at the foot. 0.00° to 5.00°.</source>
        <translation>Um wie viel die gemessene Neigung falsch sein kann; der Bericht sagt, wie weit das am Fuß klafft. 0.00° bis 5.00°.</translation>
    </message>
    <message>
        <source>How far the roof lies lower at the vent's +X end than at its −X end, both slopes' mean; negative where the −X end is lower.</source>
        <translation>Um wie viel das Dach am +X-Ende des Dachreiters tiefer liegt als an seinem −X-Ende, im Mittel beider Dachflächen; negativ, wo das −X-Ende tiefer liegt.</translation>
    </message>
    <message>
        <source>How far the vent's axis stands to the left of the ridge (to the right if negative). -5000 mm to 5000 mm.</source>
        <translation>Wie weit die Achse des Dachreiters links vom First steht (rechts, wenn negativ). -5000 mm bis 5000 mm.</translation>
    </message>
    <message>
        <source>How far trim laps over the stiles and the frieze over the head rail. 3 mm to 18 mm. 0: 1 mm past the dados' ends, 10 mm at least.</source>
        <translation>Wie weit die Deckbretter über die Wangen und der Fries über das Kopfholz greifen. 3 mm bis 18 mm. 0: 1 mm über die Enden der Nuten, mindestens 10 mm.</translation>
    </message>
    <message>
        <source>How far your saw's blade tilts from upright. 0.00° to 60.00°.</source>
        <translation>Wie weit sich das Blatt Ihrer Säge aus dem Lot neigen lässt. 0.00° bis 60.00°.</translation>
    </message>
    <message>
        <source>How far your saw's gauge swings from square. 0.00° to 70.00°.</source>
        <translation>Wie weit sich der Anschlag Ihrer Säge aus dem rechten Winkel schwenken lässt. 0.00° bis 70.00°.</translation>
    </message>
    <message>
        <source>How many equal vents share the ridge. 1 to 24.</source>
        <translation>Wie viele gleiche Dachreiter sich den First teilen. 1 bis 24.</translation>
    </message>
    <message>
        <source>How many pieces the vent has; 0 if it has none.</source>
        <translation>Wie viele Stücke der Dachreiter hat; 0, wenn keines.</translation>
    </message>
    <message>
        <source>How much further the left slope drops at one end than at the other.</source>
        <translation>Um wie viel die linke Dachfläche an einem Ende mehr fällt als am anderen.</translation>
    </message>
    <message>
        <source>How much further the right slope drops at one end than at the other.</source>
        <translation>Um wie viel die rechte Dachfläche an einem Ende mehr fällt als am anderen.</translation>
    </message>
    <message>
        <source>How much of a new stick you reckon lost to knots, wane and splits, in percent of its length. 0.0 to 40.0.</source>
        <translation>Wie viel einer neuen Stange Sie durch Äste, Baumkante und Risse verloren geben, in Prozent ihrer Länge. 0.0 bis 40.0.</translation>
    </message>
    <message>
        <source>How much of each course of the barn's shingles or tiles shows, up the slope; there is one step flashing for each. 60 mm to 600 mm. 0: sheet covering: side pans instead of steps.</source>
        <translation>Wie viel von jeder Reihe der Schindeln oder Ziegel der Scheune in der Dachneigung sichtbar ist; zu jeder gehört ein Stufenblech. 60 mm bis 600 mm. 0: Blechdeckung: durchgehende Seitenbleche statt Stufen.</translation>
    </message>
    <message>
        <source>How much wider a dado is than the slat is thick. 0 mm to 1 mm.</source>
        <translation>Um wie viel eine Nut breiter ist, als die Lamelle dick ist. 0 mm bis 1 mm.</translation>
    </message>
    <message>
        <source>How planks turn a corner on a square plan: the gable side runs through and the eave side stops against it, or both are mitred. Other plans are always mitred.</source>
        <translation>Wie Bohlen bei quadratischem Grundriss um eine Ecke gehen: die Giebelseite läuft durch und die Traufseite stößt dagegen, oder beide sind auf Gehrung. Andere Grundrisse sind immer auf Gehrung.</translation>
    </message>
    <message>
        <source>How the opening was cut.</source>
        <translation>Wie die Öffnung geschnitten wurde.</translation>
    </message>
    <message>
        <source>How the pitch was measured, as it is to stand in the report.</source>
        <translation>Wie die Neigung gemessen wurde, so wie es im Bericht stehen soll.</translation>
    </message>
    <message>
        <source>Inches are rounded to one part in so many on the report. 8 to 64.</source>
        <translation>Zoll werden im Bericht auf einen so großen Bruchteil gerundet. 8 bis 64.</translation>
    </message>
    <message>
        <source>Jack and common rafters on each side, between the hips; an odd number has a common at mid-side. Under a gable roof those between the gables' own. −1: automatic, by the sheathing's span. -1 to 12.</source>
        <translation>Schifter und Normalsparren auf jeder Seite zwischen den Gratsparren; bei ungerader Zahl steht ein Normalsparren in der Mitte der Seite. Unter einem Satteldach die zwischen den Giebelsparren. −1: automatisch, nach der Spannweite der Schalung. -1 bis 12.</translation>
    </message>
    <message>
        <source>Jacks and commons on each side with an eave; of a rectangle on its long sides.</source>
        <translation>Schifter und Normalsparren auf jeder Seite mit Traufe; beim Rechteck auf seinen langen Seiten.</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>Joint to be caulked between trim and drip ring. 3 mm to 6 mm.</source>
        <translation>Abzudichtende Fuge zwischen Deckbrettern und Tropfkranz. 3 mm bis 6 mm.</translation>
    </message>
    <message>
        <source>King post, square. Empty: the list's usual stock for this use.</source>
        <translation>Kaiserstiel, quadratisch. Leer: das in der Liste übliche Holz für diese Verwendung.</translation>
    </message>
    <message>
        <source>Largest mitre at which your saw's blade still tilts fully; beyond it the tilt falls to nothing at the largest mitre. 0.00° to 70.00°.</source>
        <translation>Größte Gehrung, bei der sich das Blatt Ihrer Säge noch ganz neigen lässt; darüber nimmt die Neigung bis zur größten Gehrung auf null ab. 0.00° bis 70.00°.</translation>
    </message>
    <message>
        <source>Legs, posts, rails, soles, mullions and bearer. Empty: the list's usual stock for this use.</source>
        <translation>Stiele, Pfosten, Riegel, Schwellen, Mittelpfosten und Träger. Leer: das in der Liste übliche Holz für diese Verwendung.</translation>
    </message>
    <message>
        <source>Length of a rectangular vent over the cladding, along the ridge (with a corner to the ridge, along its first side's direction); 1:2 of the width at most. 300 mm to 3600 mm. 0: as the width: a square.</source>
        <translation>Länge eines rechteckigen Dachreiters über die Verschalung, längs des Firsts (mit einer Ecke zum First: in der Richtung seiner ersten Seite); höchstens 1:2 zur Breite. 300 mm bis 3600 mm. 0: wie die Breite: ein Quadrat.</translation>
    </message>
    <message>
        <source>Length of all eaves together, verges apart.</source>
        <translation>Länge aller Traufen zusammen, ohne Ortgänge.</translation>
    </message>
    <message>
        <source>Length of all verges of a gable roof together, up the slope.</source>
        <translation>Länge aller Ortgänge eines Satteldachs zusammen, die Dachfläche hinauf.</translation>
    </message>
    <message>
        <source>Length of one hip of the covering, eave to peak; 0 for a gable roof.</source>
        <translation>Länge eines Grats der Deckung, von der Traufe zur Spitze; 0 beim Satteldach.</translation>
    </message>
    <message>
        <source>Length of the opening along the ridge, level; as its side but on a rectangle.</source>
        <translation>Länge der Öffnung längs des Firsts, waagerecht; wie ihre Seite, außer beim Rechteck.</translation>
    </message>
    <message>
        <source>Length of the vent over the cladding, along the ridge; as the width but on a rectangle.</source>
        <translation>Länge des Dachreiters über die Verschalung, längs des Firsts; wie die Breite, außer beim Rechteck.</translation>
    </message>
    <message>
        <source>Length of the vent's own ridge in the covering; 0 where the hips meet in a point.</source>
        <translation>Länge des Firsts des Reiterdachs in der Deckung; 0, wo die Grate in einem Punkt zusammenlaufen.</translation>
    </message>
    <message>
        <source>Length of unbroken ridge that the vents share; 0 if it does not matter. 0 mm to 500000 mm. 0: not given.</source>
        <translation>Länge des ununterbrochenen Firsts, den sich die Dachreiter teilen; 0, wenn sie keine Rolle spielt. 0 mm bis 500000 mm. 0: nicht angegeben.</translation>
    </message>
    <message>
        <source>Length of your driver with its bit, along the screw. 120 mm to 600 mm.</source>
        <translation>Länge Ihres Schraubers mit Bit, in Richtung der Schraube. 120 mm bis 600 mm.</translation>
    </message>
    <message>
        <source>Length, width and thickness of each piece's blank, in mm.</source>
        <translation>Länge, Breite und Dicke des Rohlings jedes Stücks, in mm.</translation>
    </message>
    <message>
        <source>Long edges of the slats: ripped plumb to the stiles' faces, or left square.</source>
        <translation>Längskanten der Lamellen: lotrecht, bündig mit den Wangen gesägt, oder rechtwinklig gelassen.</translation>
    </message>
    <message>
        <source>Longest clear width that a slat may bridge without a mullion. 300 mm to 2000 mm.</source>
        <translation>Größte lichte Breite, die eine Lamelle ohne Mittelpfosten überspannen darf. 300 mm bis 2000 mm.</translation>
    </message>
    <message>
        <source>Louvers</source>
        <translation>Lamellen</translation>
    </message>
    <message>
        <source>Mesh with battens on the inner face of each panel.</source>
        <translation>Gewebe mit Leisten auf der Innenseite jedes Felds.</translation>
    </message>
    <message>
        <source>Millimetres are rounded to this on the report. 0.1 to 5.0.</source>
        <translation>Auf so viel werden Millimeter im Bericht gerundet. 0.1 bis 5.0.</translation>
    </message>
    <message>
        <source>Moisture of the batten stock, as measured, in percent of its dry weight; weights follow from it. 4.0 to 40.0. 0: as the stock list says.</source>
        <translation>Gemessene Holzfeuchte (Leistenholz), in Prozent des Trockengewichts; die Gewichte folgen daraus. 4.0 bis 40.0. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Moisture of the cladding stock, as measured, in percent of its dry weight; weights follow from it. 4.0 to 40.0. 0: as the stock list says.</source>
        <translation>Gemessene Holzfeuchte (Holz der Verschalung), in Prozent des Trockengewichts; die Gewichte folgen daraus. 4.0 bis 40.0. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Moisture of the corner board stock, as measured, in percent of its dry weight; weights follow from it. 4.0 to 40.0. 0: as the stock list says.</source>
        <translation>Gemessene Holzfeuchte (Holz der Eckbretter), in Prozent des Trockengewichts; die Gewichte folgen daraus. 4.0 bis 40.0. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Moisture of the fascia stock, as measured, in percent of its dry weight; weights follow from it. 4.0 to 40.0. 0: as the stock list says.</source>
        <translation>Gemessene Holzfeuchte (Holz der Stirnbretter), in Prozent des Trockengewichts; die Gewichte folgen daraus. 4.0 bis 40.0. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Moisture of the frame stock, as measured, in percent of its dry weight; weights follow from it. 4.0 to 40.0. 0: as the stock list says.</source>
        <translation>Gemessene Holzfeuchte (Rahmenholz), in Prozent des Trockengewichts; die Gewichte folgen daraus. 4.0 bis 40.0. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Moisture of the king post stock, as measured, in percent of its dry weight; weights follow from it. 4.0 to 40.0. 0: as the stock list says.</source>
        <translation>Gemessene Holzfeuchte (Holz des Kaiserstiels), in Prozent des Trockengewichts; die Gewichte folgen daraus. 4.0 bis 40.0. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Moisture of the plate stock, as measured, in percent of its dry weight; weights follow from it. 4.0 to 40.0. 0: as the stock list says.</source>
        <translation>Gemessene Holzfeuchte (Rähmholz), in Prozent des Trockengewichts; die Gewichte folgen daraus. 4.0 bis 40.0. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Moisture of the rafter stock, as measured, in percent of its dry weight; weights follow from it. 4.0 to 40.0. 0: as the stock list says.</source>
        <translation>Gemessene Holzfeuchte (Sparrenholz), in Prozent des Trockengewichts; die Gewichte folgen daraus. 4.0 bis 40.0. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Moisture of the ridge stock, as measured, in percent of its dry weight; weights follow from it. 4.0 to 40.0. 0: as the stock list says.</source>
        <translation>Gemessene Holzfeuchte (Firstholz), in Prozent des Trockengewichts; die Gewichte folgen daraus. 4.0 bis 40.0. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Moisture of the ring stock, as measured, in percent of its dry weight; weights follow from it. 4.0 to 40.0. 0: as the stock list says.</source>
        <translation>Gemessene Holzfeuchte (Holz des Tropfkranzes), in Prozent des Trockengewichts; die Gewichte folgen daraus. 4.0 bis 40.0. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Moisture of the sheathing stock, as measured, in percent of its dry weight; weights follow from it. 4.0 to 40.0. 0: as the stock list says.</source>
        <translation>Gemessene Holzfeuchte (Platte der Dachschalung), in Prozent des Trockengewichts; die Gewichte folgen daraus. 4.0 bis 40.0. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Moisture of the slat stock, as measured, in percent of its dry weight; weights follow from it. 4.0 to 40.0. 0: as the stock list says.</source>
        <translation>Gemessene Holzfeuchte (Lamellenholz), in Prozent des Trockengewichts; die Gewichte folgen daraus. 4.0 bis 40.0. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Moisture of the soffit stock, as measured, in percent of its dry weight; weights follow from it. 4.0 to 40.0. 0: as the stock list says.</source>
        <translation>Gemessene Holzfeuchte (Holz der Untersicht), in Prozent des Trockengewichts; die Gewichte folgen daraus. 4.0 bis 40.0. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Moisture of the stile stock, as measured, in percent of its dry weight; weights follow from it. 4.0 to 40.0. 0: as the stock list says.</source>
        <translation>Gemessene Holzfeuchte (Wangenholz), in Prozent des Trockengewichts; die Gewichte folgen daraus. 4.0 bis 40.0. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Moisture of the trim stock, as measured, in percent of its dry weight; weights follow from it. 4.0 to 40.0. 0: as the stock list says.</source>
        <translation>Gemessene Holzfeuchte (Holz der Deckbretter), in Prozent des Trockengewichts; die Gewichte folgen daraus. 4.0 bis 40.0. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Most wood left on a leg's foot below the slopes in use, plumb.</source>
        <translation>Größte Holzzugabe am Fuß eines Stiels unter den verwendeten Dachflächen, lotrecht.</translation>
    </message>
    <message>
        <source>Name of the job, as it stands in the report's title block.</source>
        <translation>Name des Auftrags, wie er im Schriftfeld des Berichts steht.</translation>
    </message>
    <message>
        <source>Narrowest place on the way to the roof: a hatch, a door, between the rails of a scaffold. 300 mm to 5000 mm. 0: not given.</source>
        <translation>Engste Stelle auf dem Weg zum Dach: eine Luke, eine Tür, zwischen den Geländern eines Gerüsts. 300 mm bis 5000 mm. 0: nicht angegeben.</translation>
    </message>
    <message>
        <source>Net free area of the louvers: head and sill gaps are closed, screen taken off.</source>
        <translation>Freier Querschnitt der Lamellen: Fugen an Kopf und Sohlbank sind geschlossen, das Gitter ist abgezogen.</translation>
    </message>
    <message>
        <source>Net free area wanted from each vent, in square metres. 0.0 to 100.0. 0: by the floor or by the building's width, if either is given.</source>
        <translation>Freier Querschnitt, der von jedem Dachreiter verlangt wird, in Quadratmetern. 0.0 bis 100.0. 0: nach dem Boden oder der Gebäudebreite, wenn eines davon angegeben ist.</translation>
    </message>
    <message>
        <source>Not made here: bought, used again, or not wanted. Its pieces are in no model, count or weight, the report lists it as left out, and its neighbours stay as they are.</source>
        <translation>Wird hier nicht gemacht: gekauft, wiederverwendet oder nicht gewünscht. Seine Stücke sind in keinem Modell, keiner Zahl und keinem Gewicht, der Bericht führt es als weggelassen auf, und seine Nachbarn bleiben, wie sie sind.</translation>
    </message>
    <message>
        <source>Number of sides of the plan: 4, 6 or 8. 4 to 8.</source>
        <translation>Zahl der Seiten des Grundrisses: 4, 6 oder 8. 4 bis 8.</translation>
    </message>
    <message>
        <source>Number of the arrangement of these properties.</source>
        <translation>Nummer der Anordnung dieser Eigenschaften.</translation>
    </message>
    <message>
        <source>Offcuts that you have already, as stock and lengths: 2x4: 1200, 900; 1x6: 2 m. A bare number is in mm.</source>
        <translation>Reststücke, die Sie schon haben, als Holz und Längen: 2x4: 1200, 900; 1x6: 2 m. Eine bloße Zahl ist in mm.</translation>
    </message>
    <message>
        <source>On a roof that is drawn: how far along the ridge the vent's axis stands from the end that FromEnd names. Several vents stand by EndDistance.</source>
        <translation>Auf einem gezeichneten Dach: wie weit die Achse des Dachreiters längs des Firsts von dem Ende steht, das FromEnd nennt. Mehrere Dachreiter stehen nach EndDistance.</translation>
    </message>
    <message>
        <source>Opening</source>
        <translation>Öffnung</translation>
    </message>
    <message>
        <source>Paper that the report is laid out for.</source>
        <translation>Papier, für das der Bericht gesetzt wird.</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Part, yours to set</source>
        <translation>Teil, von Ihnen zu setzen</translation>
    </message>
    <message>
        <source>Pieces of the parts that are left out: not made here, and in no other count.</source>
        <translation>Stücke der Teile, die weggelassen sind: hier nicht gemacht und in keiner anderen Zahl.</translation>
    </message>
    <message>
        <source>Pieces to cut for all vents on the ridge.</source>
        <translation>Zu sägende Stücke aller Dachreiter auf dem First.</translation>
    </message>
    <message>
        <source>Pieces to cut.</source>
        <translation>Zu sägende Stücke.</translation>
    </message>
    <message>
        <source>Pitch of a flared roof's eave, below the break. 5.00° to 60.00°. 0: half the faces' pitch.</source>
        <translation>Neigung der Traufe eines geknickten Dachs, unter dem Knick. 5.00° bis 60.00°. 0: die halbe Neigung der Flächen.</translation>
    </message>
    <message>
        <source>Pitch of a rectangle's end faces, over its short sides, where it is another than the long faces'; their overhang follows, so that all eaves are level. 5.00° to 75.00°. 0: as the long faces.</source>
        <translation>Neigung der Walmflächen eines Rechtecks, über seinen kurzen Seiten, wo sie anders ist als die der langen Flächen; ihr Überstand folgt daraus, so dass alle Traufen gleich hoch sind. 5.00° bis 75.00°. 0: wie die langen Flächen.</translation>
    </message>
    <message>
        <source>Pitch of a rectangle's end faces, where it differs; else 0.</source>
        <translation>Neigung der Walmflächen eines Rechtecks, wo sie anders ist; sonst 0.</translation>
    </message>
    <message>
        <source>Pitch of the barn's left slope that the vent is made to.</source>
        <translation>Neigung der linken Dachfläche der Scheune, nach der der Dachreiter gemacht ist.</translation>
    </message>
    <message>
        <source>Pitch of the barn's right slope that the vent is made to.</source>
        <translation>Neigung der rechten Dachfläche der Scheune, nach der der Dachreiter gemacht ist.</translation>
    </message>
    <message>
        <source>Pitch of the faces below the break of a flared roof; 0 where it is not flared.</source>
        <translation>Neigung der Flächen unter dem Knick eines geknickten Dachs; 0, wo es keinen Knick hat.</translation>
    </message>
    <message>
        <source>Pitch of the slope on your left when you look along the vent's +X axis, from the level. 0.00° to less than 75.00°.</source>
        <translation>Neigung der Dachfläche zu Ihrer Linken, wenn Sie längs der +X-Achse des Dachreiters schauen, gegen die Waagerechte. 0.00° bis weniger als 75.00°.</translation>
    </message>
    <message>
        <source>Pitch of the slope on your right when you look along the vent's +X axis, from the level. 0.00° to less than 75.00°.</source>
        <translation>Neigung der Dachfläche zu Ihrer Rechten, wenn Sie längs der +X-Achse des Dachreiters schauen, gegen die Waagerechte. 0.00° bis weniger als 75.00°.</translation>
    </message>
    <message>
        <source>Pitch of the vent's roof faces from the level (not the slope of its hips). 5.00° to 70.00°.</source>
        <translation>Neigung der Flächen des Reiterdachs gegen die Waagerechte (nicht die Neigung seiner Grate). 5.00° bis 70.00°.</translation>
    </message>
    <message>
        <source>Pitch of the vent's roof faces, which is not the slope of its hips.</source>
        <translation>Neigung der Flächen des Reiterdachs, die nicht die Neigung seiner Grate ist.</translation>
    </message>
    <message>
        <source>Plumb depth of the rafters' tails at the fascia. 60 mm to 300 mm.</source>
        <translation>Lotrechte Höhe der Sparrenköpfe am Stirnbrett. 60 mm bis 300 mm.</translation>
    </message>
    <message>
        <source>Plumb drop from the level of the ridge's highest point under the vent to the covering on your left, at the vent's +X end, when you look along +X: at the corner of the rectangle round the plan, over the cladding. Give all four drops or none; the pitches then follow from the smaller drop of each slope. 0.1 mm to 5000 mm. 0: not measured.</source>
        <translation>Lotrechtes Maß von der Höhe des höchsten Firstpunkts unter dem Dachreiter hinab zur Deckung zu Ihrer Linken, am +X-Ende des Dachreiters, wenn Sie längs +X schauen: an der Ecke des Rechtecks um den Grundriss, über die Verschalung. Geben Sie alle vier Lotmaße an oder keines; die Neigungen folgen dann aus dem kleineren Lotmaß jeder Dachfläche. 0.1 mm bis 5000 mm. 0: nicht gemessen.</translation>
    </message>
    <message>
        <source>Plumb drop from the level of the ridge's highest point under the vent to the covering on your left, at the vent's −X end, when you look along +X: at the corner of the rectangle round the plan, over the cladding. Give all four drops or none; the pitches then follow from the smaller drop of each slope. 0.1 mm to 5000 mm. 0: not measured.</source>
        <translation>Lotrechtes Maß von der Höhe des höchsten Firstpunkts unter dem Dachreiter hinab zur Deckung zu Ihrer Linken, am −X-Ende des Dachreiters, wenn Sie längs +X schauen: an der Ecke des Rechtecks um den Grundriss, über die Verschalung. Geben Sie alle vier Lotmaße an oder keines; die Neigungen folgen dann aus dem kleineren Lotmaß jeder Dachfläche. 0.1 mm bis 5000 mm. 0: nicht gemessen.</translation>
    </message>
    <message>
        <source>Plumb drop from the level of the ridge's highest point under the vent to the covering on your right, at the vent's +X end, when you look along +X: at the corner of the rectangle round the plan, over the cladding. Give all four drops or none; the pitches then follow from the smaller drop of each slope. 0.1 mm to 5000 mm. 0: not measured.</source>
        <translation>Lotrechtes Maß von der Höhe des höchsten Firstpunkts unter dem Dachreiter hinab zur Deckung zu Ihrer Rechten, am +X-Ende des Dachreiters, wenn Sie längs +X schauen: an der Ecke des Rechtecks um den Grundriss, über die Verschalung. Geben Sie alle vier Lotmaße an oder keines; die Neigungen folgen dann aus dem kleineren Lotmaß jeder Dachfläche. 0.1 mm bis 5000 mm. 0: nicht gemessen.</translation>
    </message>
    <message>
        <source>Plumb drop from the level of the ridge's highest point under the vent to the covering on your right, at the vent's −X end, when you look along +X: at the corner of the rectangle round the plan, over the cladding. Give all four drops or none; the pitches then follow from the smaller drop of each slope. 0.1 mm to 5000 mm. 0: not measured.</source>
        <translation>Lotrechtes Maß von der Höhe des höchsten Firstpunkts unter dem Dachreiter hinab zur Deckung zu Ihrer Rechten, am −X-Ende des Dachreiters, wenn Sie längs +X schauen: an der Ecke des Rechtecks um den Grundriss, über die Verschalung. Geben Sie alle vier Lotmaße an oder keines; die Neigungen folgen dann aus dem kleineren Lotmaß jeder Dachfläche. 0.1 mm bis 5000 mm. 0: nicht gemessen.</translation>
    </message>
    <message>
        <source>Plumb height of the cladding's foot above the roof covering. 0 mm to 100 mm.</source>
        <translation>Lotrechte Höhe des Fußes der Verschalung über der Deckung. 0 mm bis 100 mm.</translation>
    </message>
    <message>
        <source>Plumb height of the roof sheathing's underside above the plate's outer edge. 20 mm to 400 mm. 0: so that no rafter is notched deeper than a third.</source>
        <translation>Lotrechte Höhe der Unterseite der Dachschalung über der Außenkante des Rähms. 20 mm bis 400 mm. 0: so dass kein Sparren tiefer als ein Drittel ausgekerbt wird.</translation>
    </message>
    <message>
        <source>Remarks of your own, printed on the report's first page.</source>
        <translation>Eigene Bemerkungen, auf der ersten Seite des Berichts gedruckt.</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Revision of the model, as it stands in the report's title block.</source>
        <translation>Revision des Modells, wie sie im Schriftfeld des Berichts steht.</translation>
    </message>
    <message>
        <source>Ridge boards, rafters and others that are drawn and must not be cut: each takes away what lies plumb over or under it.</source>
        <translation>Firsthölzer, Sparren und anderes, das gezeichnet ist und nicht geschnitten werden darf: jedes nimmt weg, was lotrecht über oder unter ihm liegt.</translation>
    </message>
    <message>
        <source>Ridge piece of a rectangle's or a gable's roof. Empty: the list's usual stock for this use.</source>
        <translation>Firstbohle des Dachs eines Rechtecks oder eines Satteldachs. Leer: das in der Liste übliche Holz für diese Verwendung.</translation>
    </message>
    <message>
        <source>Roof sheathing. Empty: the list's usual stock for this use.</source>
        <translation>Dachschalung. Leer: das in der Liste übliche Holz für diese Verwendung.</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Reihe</translation>
    </message>
    <message>
        <source>Screen mesh. Empty: the list's usual stock for this use.</source>
        <translation>Gittergewebe. Leer: das in der Liste übliche Holz für diese Verwendung.</translation>
    </message>
    <message>
        <source>Share of the opening that the mesh leaves free (1/4 in hardware cloth 1.0, 1/8 in mesh 0.8). 0.2 to 1.0.</source>
        <translation>Anteil der Öffnung, den das Gewebe frei lässt (1/4-Zoll-Drahtgitter 1,0, 1/8-Zoll-Gewebe 0,8). 0.2 bis 1.0.</translation>
    </message>
    <message>
        <source>Sheathing's underside above the plate's outer edge, plumb.</source>
        <translation>Unterseite der Schalung über der Außenkante des Rähms, lotrecht.</translation>
    </message>
    <message>
        <source>Sheet cladding, or upright boards with a gap.</source>
        <translation>Plattenverschalung, oder aufrechte Bretter mit einer Fuge.</translation>
    </message>
    <message>
        <source>Shop</source>
        <translation>Werkstatt</translation>
    </message>
    <message>
        <source>Shop drawings on the next larger paper: A3 for A4, Tabloid for Letter.</source>
        <translation>Werkzeichnungen auf dem nächstgrößeren Papier: A3 für A4, Tabloid für Letter.</translation>
    </message>
    <message>
        <source>Shortest offcut that you keep. 50 mm to 3000 mm.</source>
        <translation>Kürzestes Reststück, das Sie aufheben. 50 mm bis 3000 mm.</translation>
    </message>
    <message>
        <source>Shortest piece that you let your saw cut without a holder. 50 mm to 600 mm.</source>
        <translation>Kürzestes Stück, das Sie Ihre Säge ohne Halter schneiden lassen. 50 mm bis 600 mm.</translation>
    </message>
    <message>
        <source>Side of the opening to cut in the roof, level; across the ridge.</source>
        <translation>Seite der in das Dach zu schneidenden Öffnung, waagerecht; quer zum First.</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Slats and sills. Empty: the list's usual stock for this use.</source>
        <translation>Lamellen und Sohlbänke. Leer: das in der Liste übliche Holz für diese Verwendung.</translation>
    </message>
    <message>
        <source>Slats in each gable end, without the sill.</source>
        <translation>Lamellen in jedem Giebel, ohne die Sohlbank.</translation>
    </message>
    <message>
        <source>Slats in one panel, without the sill.</source>
        <translation>Lamellen in einem Feld, ohne die Sohlbank.</translation>
    </message>
    <message>
        <source>Slats in one panel, without the sill. 1 to 60. 0: the fewest that hide the sky at the rain angle.</source>
        <translation>Lamellen in einem Feld, ohne die Sohlbank. 1 bis 60. 0: die wenigsten, die beim Regenwinkel den Himmel verdecken.</translation>
    </message>
    <message>
        <source>Slope of the drip ring from the level. 10.00° to 45.00°. 0: the slats' slope, 45° at most.</source>
        <translation>Neigung des Tropfkranzes gegen die Waagerechte. 10.00° bis 45.00°. 0: die Neigung der Lamellen, höchstens 45°.</translation>
    </message>
    <message>
        <source>Slope of the hips below the break of a flared roof; 0 where it is not flared.</source>
        <translation>Neigung der Grate unter dem Knick eines geknickten Dachs; 0, wo es keinen Knick hat.</translation>
    </message>
    <message>
        <source>Slope of the hips, which is not the pitch of the faces; 0 for a gable roof.</source>
        <translation>Neigung der Grate, die nicht die Neigung der Flächen ist; 0 beim Satteldach.</translation>
    </message>
    <message>
        <source>Slope of the sill from the level. 10.00° to 60.00°. 0: the slats' slope.</source>
        <translation>Neigung der Sohlbank gegen die Waagerechte. 10.00° bis 60.00°. 0: die Neigung der Lamellen.</translation>
    </message>
    <message>
        <source>Slope of the slats from the level. 25.00° to 60.00°.</source>
        <translation>Neigung der Lamellen gegen die Waagerechte. 25.00° bis 60.00°.</translation>
    </message>
    <message>
        <source>Slope of the vent's hips from the level; if it is given, the faces' pitch follows from it and the roof pitch is left aside. 4.00° to 65.00°. 0: from the faces' pitch.</source>
        <translation>Neigung der Grate des Reiterdachs gegen die Waagerechte; ist sie angegeben, so folgt die Neigung der Flächen daraus, und die Dachneigung bleibt außer Betracht. 4.00° bis 65.00°. 0: aus der Neigung der Flächen.</translation>
    </message>
    <message>
        <source>Soffit. Empty: the list's usual stock for this use.</source>
        <translation>Untersicht. Leer: das in der Liste übliche Holz für diese Verwendung.</translation>
    </message>
    <message>
        <source>Square metres of floor for one of free area: 150 by the usual rule for attics, 300 under its conditions. 20.0 to 1000.0.</source>
        <translation>Quadratmeter Boden auf einen freien Querschnitts: 150 nach der üblichen Regel für Dachräume, 300 unter deren Bedingungen. 20.0 bis 1000.0.</translation>
    </message>
    <message>
        <source>Square metres that a litre of primer or paint covers in one coat, as its tin says. 2.0 to 20.0.</source>
        <translation>Quadratmeter, die ein Liter Grundierung oder Farbe in einem Anstrich deckt, wie es auf der Dose steht. 2.0 bis 20.0.</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Abschnitt</translation>
    </message>
    <message>
        <source>Steepest sight line, rising inward, that the slats must still block. 0.00° to 45.00°.</source>
        <translation>Steilste nach innen steigende Sichtlinie, die die Lamellen noch verdecken müssen. 0.00° bis 45.00°.</translation>
    </message>
    <message>
        <source>Stiles and head rails of the louver panels. Empty: the list's usual stock for this use.</source>
        <translation>Wangen und Kopfhölzer der Lamellenfelder. Leer: das in der Liste übliche Holz für diese Verwendung.</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Holz</translation>
    </message>
    <message>
        <source>Stock for this kind of part alone, by its name in the vent's stock list: another wood or length of the form and the size of the vent's own. Empty: the vent's.</source>
        <translation>Holz für diese Art von Teil allein, mit seinem Namen in der Holzliste des Dachreiters: ein anderes Holz oder eine andere Länge von Form und Größe des im Dachreiter gewählten. Leer: das des Dachreiters.</translation>
    </message>
    <message>
        <source>Stock list: us, eu, or the path of a list of your own.</source>
        <translation>Holzliste: us, eu oder der Pfad einer eigenen Liste.</translation>
    </message>
    <message>
        <source>Stock that the pieces are cut from.</source>
        <translation>Holz, aus dem die Stücke gesägt werden.</translation>
    </message>
    <message>
        <source>The clear opening against the louvers.</source>
        <translation>Die lichte Öffnung im Vergleich mit den Lamellen.</translation>
    </message>
    <message>
        <source>The description in the tree that the last recompute wrote.</source>
        <translation>Die Beschreibung im Baum, die die letzte Neuberechnung geschrieben hat.</translation>
    </message>
    <message>
        <source>The kind of part, as reports and references call it.</source>
        <translation>Die Art des Teils, wie Berichte und Verweise sie nennen.</translation>
    </message>
    <message>
        <source>The kind's number in its stage's marks.</source>
        <translation>Die Nummer der Art in den Zeichen ihres Abschnitts.</translation>
    </message>
    <message>
        <source>The least of louvers, throat and roof opening.</source>
        <translation>Der kleinste Querschnitt von Lamellen, Hals und Dachöffnung.</translation>
    </message>
    <message>
        <source>The mark of each piece.</source>
        <translation>Das Zeichen jedes Stücks.</translation>
    </message>
    <message>
        <source>The name of each piece, in the order of the shape's solids.</source>
        <translation>Der Name jedes Stücks, in der Reihenfolge der Körper der Form.</translation>
    </message>
    <message>
        <source>The objects that the roof is read from.</source>
        <translation>Die Objekte, von denen das Dach abgelesen wird.</translation>
    </message>
    <message>
        <source>The opening of another vent that was cut into the same roof before this one.</source>
        <translation>Die Öffnung eines anderen Dachreiters, die vor dieser in dasselbe Dach geschnitten wurde.</translation>
    </message>
    <message>
        <source>The roof is read again when one of these changes.</source>
        <translation>Das Dach wird neu abgelesen, wenn sich eines davon ändert.</translation>
    </message>
    <message>
        <source>The roof's planes and ridge, by which it is found again.</source>
        <translation>Die Ebenen und der First des Dachs, an denen es wiedergefunden wird.</translation>
    </message>
    <message>
        <source>The stage, as reports and references call it.</source>
        <translation>Der Abschnitt, wie Berichte und Verweise ihn nennen.</translation>
    </message>
    <message>
        <source>The vent that the opening is cut for, with all others of its row.</source>
        <translation>Der Dachreiter, für den die Öffnung geschnitten ist, mit allen anderen seiner Reihe.</translation>
    </message>
    <message>
        <source>The vent that the part belongs to.</source>
        <translation>Der Dachreiter, zu dem das Teil gehört.</translation>
    </message>
    <message>
        <source>The vent that the stage belongs to.</source>
        <translation>Der Dachreiter, zu dem der Abschnitt gehört.</translation>
    </message>
    <message>
        <source>The vent that this one is alike to, the first of the row.</source>
        <translation>Der Dachreiter, dem dieser gleicht, der erste der Reihe.</translation>
    </message>
    <message>
        <source>The vent whose cut list this is.</source>
        <translation>Der Dachreiter, dessen Schnittliste das ist.</translation>
    </message>
    <message>
        <source>Thickest stock that your saw cuts with its blade upright. 20 mm to 300 mm.</source>
        <translation>Dickstes Holz, das Ihre Säge mit aufrechtem Blatt schneidet. 20 mm bis 300 mm.</translation>
    </message>
    <message>
        <source>Thickness of the batten stock, as measured. 3 mm to 300 mm. 0: as the stock list says.</source>
        <translation>Gemessene Dicke (Leistenholz). 3 mm bis 300 mm. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Thickness of the cladding stock, as measured. 3 mm to 300 mm. 0: as the stock list says.</source>
        <translation>Gemessene Dicke (Holz der Verschalung). 3 mm bis 300 mm. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Thickness of the corner board stock, as measured. 3 mm to 300 mm. 0: as the stock list says.</source>
        <translation>Gemessene Dicke (Holz der Eckbretter). 3 mm bis 300 mm. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Thickness of the fascia stock, as measured. 3 mm to 300 mm. 0: as the stock list says.</source>
        <translation>Gemessene Dicke (Holz der Stirnbretter). 3 mm bis 300 mm. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Thickness of the frame stock, as measured. 3 mm to 300 mm. 0: as the stock list says.</source>
        <translation>Gemessene Dicke (Rahmenholz). 3 mm bis 300 mm. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Thickness of the king post stock, as measured. 3 mm to 300 mm. 0: as the stock list says.</source>
        <translation>Gemessene Dicke (Holz des Kaiserstiels). 3 mm bis 300 mm. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Thickness of the plate stock, as measured. 3 mm to 300 mm. 0: as the stock list says.</source>
        <translation>Gemessene Dicke (Rähmholz). 3 mm bis 300 mm. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Thickness of the rafter stock, as measured. 3 mm to 300 mm. 0: as the stock list says.</source>
        <translation>Gemessene Dicke (Sparrenholz). 3 mm bis 300 mm. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Thickness of the ridge board under the opening, which is never cut. 0: none. A vent on one slope has none.</source>
        <translation>Dicke des Firstholzes unter der Öffnung, das nie geschnitten wird. 0: keines. Ein Dachreiter auf einer Dachfläche hat keines.</translation>
    </message>
    <message>
        <source>Thickness of the ridge stock, as measured. 3 mm to 300 mm. 0: as the stock list says.</source>
        <translation>Gemessene Dicke (Firstholz). 3 mm bis 300 mm. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Thickness of the ring stock, as measured. 3 mm to 300 mm. 0: as the stock list says.</source>
        <translation>Gemessene Dicke (Holz des Tropfkranzes). 3 mm bis 300 mm. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Thickness of the screen stock, as measured. 0.2 mm to 10 mm. 0: as the stock list says.</source>
        <translation>Gemessene Dicke (Gittergewebe). 0.2 mm bis 10 mm. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Thickness of the sheathing stock, as measured. 3 mm to 300 mm. 0: as the stock list says.</source>
        <translation>Gemessene Dicke (Platte der Dachschalung). 3 mm bis 300 mm. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Thickness of the slat stock, as measured. 3 mm to 300 mm. 0: as the stock list says.</source>
        <translation>Gemessene Dicke (Lamellenholz). 3 mm bis 300 mm. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Thickness of the soffit stock, as measured. 3 mm to 300 mm. 0: as the stock list says.</source>
        <translation>Gemessene Dicke (Holz der Untersicht). 3 mm bis 300 mm. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Thickness of the stile stock, as measured. 3 mm to 300 mm. 0: as the stock list says.</source>
        <translation>Gemessene Dicke (Wangenholz). 3 mm bis 300 mm. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Thickness of the trim stock, as measured. 3 mm to 300 mm. 0: as the stock list says.</source>
        <translation>Gemessene Dicke (Holz der Deckbretter). 3 mm bis 300 mm. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Top of the base above the ridge.</source>
        <translation>Oberkante des Sockels über dem First.</translation>
    </message>
    <message>
        <source>Trade's rule for the width: inches of vent for each foot of its share of the ridge (1.25 is 104 mm per metre). 1.0 to 1.5.</source>
        <translation>Handwerksregel für die Breite: Zoll Dachreiter je Fuß seines Anteils am First (1,25 sind 104 mm je Meter). 1.0 bis 1.5.</translation>
    </message>
    <message>
        <source>Trim and frieze of the louver stage. Empty: the list's usual stock for this use.</source>
        <translation>Deckbretter und Fries des Lamellenabschnitts. Leer: das in der Liste übliche Holz für diese Verwendung.</translation>
    </message>
    <message>
        <source>Unit of lengths on the report.</source>
        <translation>Einheit der Längen im Bericht.</translation>
    </message>
    <message>
        <source>Vent roof</source>
        <translation>Reiterdach</translation>
    </message>
    <message>
        <source>Weight of all vents on the ridge together. In kg.</source>
        <translation>Gewicht aller Dachreiter auf dem First zusammen. In Kilogramm.</translation>
    </message>
    <message>
        <source>Weight of the base. In kg.</source>
        <translation>Gewicht des Sockels. In Kilogramm.</translation>
    </message>
    <message>
        <source>Weight of the louver stage. In kg.</source>
        <translation>Gewicht des Lamellenabschnitts. In Kilogramm.</translation>
    </message>
    <message>
        <source>Weight of the parts that are left out, as drawn; no other weight has it. In kg.</source>
        <translation>Gewicht der weggelassenen Teile, wie gezeichnet; in keinem anderen Gewicht enthalten. In Kilogramm.</translation>
    </message>
    <message>
        <source>Weight of the roof stage, without its covering. In kg.</source>
        <translation>Gewicht des Dachabschnitts, ohne seine Deckung. In Kilogramm.</translation>
    </message>
    <message>
        <source>Weight of the vent, without covering, flashing and paint. In kg.</source>
        <translation>Gewicht des Dachreiters, ohne Deckung, Anschlüsse und Anstrich. In Kilogramm.</translation>
    </message>
    <message>
        <source>What closes the gables: cladding, or slats as in the panels.</source>
        <translation>Was die Giebel schließt: Verschalung, oder Lamellen wie in den Feldern.</translation>
    </message>
    <message>
        <source>What each person is to lift at most, in kg. 5.0 to 50.0. 0: 13.6, by the lifting equation for a stage held before one.</source>
        <translation>Was jede Person höchstens heben soll, in kg. 5.0 bis 50.0. 0: 13,6, nach der Hebegleichung für einen Abschnitt, der vor dem Körper gehalten wird.</translation>
    </message>
    <message>
        <source>What the last recompute found.</source>
        <translation>Was die letzte Neuberechnung vorfand.</translation>
    </message>
    <message>
        <source>What the parts' colours tell apart: the stock that they are cut from, or their kinds. A part that you have coloured yourself keeps its colour.</source>
        <translation>Was die Farben der Teile unterscheiden: das Holz, aus dem sie gesägt sind, oder ihre Arten. Ein Teil, das Sie selbst gefärbt haben, behält seine Farbe.</translation>
    </message>
    <message>
        <source>What the pitch's error opens up at the foot, left slope.</source>
        <translation>Was der Fehler der Neigung am Fuß klaffen lässt, linke Dachfläche.</translation>
    </message>
    <message>
        <source>What the pitch's error opens up at the foot, right slope.</source>
        <translation>Was der Fehler der Neigung am Fuß klaffen lässt, rechte Dachfläche.</translation>
    </message>
    <message>
        <source>What the shape was made from.</source>
        <translation>Woraus die Form gemacht wurde.</translation>
    </message>
    <message>
        <source>What the yard asks, in one currency, as stock and price for a metre, a foot, a piece or a length: 1x6: 0.95/ft; plywood 1/2: 38 each; 2x4: 8 ft = 4.20, 10 ft = 5.60. Gives a cost sheet; stock with a price for every length is bought at the least cost.</source>
        <translation>Was der Holzhandel verlangt, in einer Währung, als Holz und Preis für einen Meter, einen Fuß, ein Stück oder eine Länge: 1x6: 0.95/ft; plywood 1/2: 38 each; 2x4: 8 ft = 4.20, 10 ft = 5.60. Ergibt eine Kostenaufstellung; Holz mit einem Preis für jede Länge wird zu den geringsten Kosten gekauft.</translation>
    </message>
    <message>
        <source>What was hidden when the opening was made.</source>
        <translation>Was ausgeblendet wurde, als die Öffnung gemacht wurde.</translation>
    </message>
    <message>
        <source>What you cut off each end of a new stick, with the saw cut, to have it sound and square. 0 mm to 300 mm.</source>
        <translation>Was Sie samt Schnittfuge an jedem Ende einer neuen Stange abschneiden, damit es gesund und rechtwinklig ist. 0 mm bis 300 mm.</translation>
    </message>
    <message>
        <source>Where AlongRidge counts from: the middle of the ridge (towards the front), its back end, or its front end, which the vent's +X axis looks at.</source>
        <translation>Von wo AlongRidge zählt: von der Mitte des Firsts (nach vorn), von seinem hinteren oder von seinem vorderen Ende, zu dem die +X-Achse des Dachreiters schaut.</translation>
    </message>
    <message>
        <source>Where drops are read: from the vent's axis along the ridge.</source>
        <translation>Wo Lotmaße abgelesen werden: von der Achse des Dachreiters längs des Firsts.</translation>
    </message>
    <message>
        <source>Where drops are read: from the vent's axis square to the ridge.</source>
        <translation>Wo Lotmaße abgelesen werden: von der Achse des Dachreiters rechtwinklig zum First.</translation>
    </message>
    <message>
        <source>Where each piece's board frame stands in the vent.</source>
        <translation>Wo das Brettsystem jedes Stücks im Dachreiter steht.</translation>
    </message>
    <message>
        <source>Where the vent stood when it last took its seat.</source>
        <translation>Wo der Dachreiter stand, als er zuletzt seinen Platz einnahm.</translation>
    </message>
    <message>
        <source>Whether a side or a corner of the plan looks along the ridge.</source>
        <translation>Ob eine Seite oder eine Ecke des Grundrisses längs des Firsts schaut.</translation>
    </message>
    <message>
        <source>Whether the ridge board and the boards of RidgeBoards are left standing in the opening, or an opening that would cut one is refused.</source>
        <translation>Ob das Firstholz und die Hölzer von RidgeBoards in der Öffnung stehen bleiben, oder eine Öffnung, die eines davon schneiden würde, abgelehnt wird.</translation>
    </message>
    <message>
        <source>Whether the ridge of a gable roof runs along the barn's or across it.</source>
        <translation>Ob der First eines Satteldachs längs des Scheunenfirsts läuft oder quer dazu.</translation>
    </message>
    <message>
        <source>Whether the vent stands astride the ridge, or as a curb wholly on the left slope (a flat roof is a slope of 0°); then heights count from the roof under the vent's axis.</source>
        <translation>Ob der Dachreiter rittlings auf dem First steht, oder als Aufsatz ganz auf der linken Dachfläche (ein Flachdach ist eine Neigung von 0°); dann zählen Höhen vom Dach unter der Achse des Dachreiters.</translation>
    </message>
    <message>
        <source>Which of the three is the least.</source>
        <translation>Welcher der drei der kleinste ist.</translation>
    </message>
    <message>
        <source>Which vent of the row this is, counted from the ridge's −X end.</source>
        <translation>Der wievielte der Reihe dieser Dachreiter ist, vom −X-Ende des Firsts gezählt.</translation>
    </message>
    <message>
        <source>Widest clear distance between rafters that the roof sheathing may bridge. 200 mm to 1500 mm.</source>
        <translation>Größter lichter Abstand der Sparren, den die Dachschalung überspannen darf. 200 mm bis 1500 mm.</translation>
    </message>
    <message>
        <source>Widest spacing of the slats, plumb; it leads where no number of slats is given. 20 mm to 400 mm. 0: by the number of slats.</source>
        <translation>Größter Abstand der Lamellen, lotrecht; er führt, wo keine Zahl von Lamellen angegeben ist. 20 mm bis 400 mm. 0: nach der Zahl der Lamellen.</translation>
    </message>
    <message>
        <source>Widest stock that your saw crosscuts. 80 mm to 3000 mm.</source>
        <translation>Breitestes Holz, das Ihre Säge quer schneidet. 80 mm bis 3000 mm.</translation>
    </message>
    <message>
        <source>Width of the barn's ridge cap, level, both slopes together. 0 mm to 1000 mm.</source>
        <translation>Breite der Firsthaube der Scheune, waagerecht, beide Dachflächen zusammen. 0 mm bis 1000 mm.</translation>
    </message>
    <message>
        <source>Width of the batten stock, as measured. 8 mm to 3000 mm. 0: as the stock list says.</source>
        <translation>Gemessene Breite (Leistenholz). 8 mm bis 3000 mm. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Width of the building across the ridge; with the ridge length it gives the area of an open ridge, 2 in for each 10 ft of width. 0 mm to 100000 mm. 0: not given.</source>
        <translation>Breite des Gebäudes quer zum First; mit der Firstlänge ergibt sie den Querschnitt eines offenen Firsts, 2 Zoll je 10 Fuß Breite. 0 mm bis 100000 mm. 0: nicht angegeben.</translation>
    </message>
    <message>
        <source>Width of the cladding stock, as measured. 8 mm to 3000 mm. 0: as the stock list says.</source>
        <translation>Gemessene Breite (Holz der Verschalung). 8 mm bis 3000 mm. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Width of the corner board stock, as measured. 8 mm to 3000 mm. 0: as the stock list says.</source>
        <translation>Gemessene Breite (Holz der Eckbretter). 8 mm bis 3000 mm. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Width of the fascia stock, as measured. 8 mm to 3000 mm. 0: as the stock list says.</source>
        <translation>Gemessene Breite (Holz der Stirnbretter). 8 mm bis 3000 mm. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Width of the frame stock, as measured. 8 mm to 3000 mm. 0: as the stock list says.</source>
        <translation>Gemessene Breite (Rahmenholz). 8 mm bis 3000 mm. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Width of the king post stock, as measured. 8 mm to 3000 mm. 0: as the stock list says.</source>
        <translation>Gemessene Breite (Holz des Kaiserstiels). 8 mm bis 3000 mm. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Width of the plate stock, as measured. 8 mm to 3000 mm. 0: as the stock list says.</source>
        <translation>Gemessene Breite (Rähmholz). 8 mm bis 3000 mm. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Width of the rafter stock, as measured. 8 mm to 3000 mm. 0: as the stock list says.</source>
        <translation>Gemessene Breite (Sparrenholz). 8 mm bis 3000 mm. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Width of the ridge stock, as measured. 8 mm to 3000 mm. 0: as the stock list says.</source>
        <translation>Gemessene Breite (Firstholz). 8 mm bis 3000 mm. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Width of the ring stock, as measured. 8 mm to 3000 mm. 0: as the stock list says.</source>
        <translation>Gemessene Breite (Holz des Tropfkranzes). 8 mm bis 3000 mm. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Width of the slat stock, as measured. 8 mm to 3000 mm. 0: as the stock list says.</source>
        <translation>Gemessene Breite (Lamellenholz). 8 mm bis 3000 mm. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Width of the soffit stock, as measured. 8 mm to 3000 mm. 0: as the stock list says.</source>
        <translation>Gemessene Breite (Holz der Untersicht). 8 mm bis 3000 mm. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Width of the stile stock, as measured. 8 mm to 3000 mm. 0: as the stock list says.</source>
        <translation>Gemessene Breite (Wangenholz). 8 mm bis 3000 mm. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Width of the trim stock, as measured. 8 mm to 3000 mm. 0: as the stock list says.</source>
        <translation>Gemessene Breite (Holz der Deckbretter). 8 mm bis 3000 mm. 0: wie die Holzliste sagt.</translation>
    </message>
    <message>
        <source>Width of the vent over the cladding.</source>
        <translation>Breite des Dachreiters über die Verschalung.</translation>
    </message>
    <message>
        <source>Width of the vent over the cladding. 300 mm to 3600 mm. 0: by the width rule from the ridge length.</source>
        <translation>Breite des Dachreiters über die Verschalung. 300 mm bis 3600 mm. 0: nach der Breitenregel aus der Firstlänge.</translation>
    </message>
    <message>
        <source>Width of the vent's roof over the fascia; of a rectangle's the smaller.</source>
        <translation>Breite des Reiterdachs über die Stirnbretter; beim Rechteck die kleinere.</translation>
    </message>
    <message>
        <source>Width of your saw's cut. 0.5 mm to 8 mm.</source>
        <translation>Breite des Schnitts Ihrer Säge. 0.5 mm bis 8 mm.</translation>
    </message>
    <message>
        <source>Width that a corner board shows on each face. 40 mm to 300 mm. 0: the corner board stock's width, 140 mm at most.</source>
        <translation>Breite, die ein Eckbrett auf jeder Seite zeigt. 40 mm bis 300 mm. 0: die Breite des Eckbrettholzes, höchstens 140 mm.</translation>
    </message>
    <message>
        <source>Width that a corner post shows on each face. 40 mm to 400 mm. 0: the frame stock's width; 0.15 of a side at most with 6 or 8 sides.</source>
        <translation>Breite, die ein Eckpfosten auf jeder Seite zeigt. 40 mm bis 400 mm. 0: die Breite des Rahmenholzes; bei 6 oder 8 Seiten höchstens 0,15 einer Seite.</translation>
    </message>
    <message>
        <source>With several vents: from each end of the unbroken ridge to the axis of the nearest vent; between these the vents are evenly spaced. One vent stands in the middle. 150 mm to 250000 mm. 0: half a vent's share of the ridge.</source>
        <translation>Bei mehreren Dachreitern: von jedem Ende des ununterbrochenen Firsts bis zur Achse des nächsten Dachreiters; dazwischen sind die Dachreiter gleichmäßig verteilt. Ein einzelner Dachreiter steht in der Mitte. 150 mm bis 250000 mm. 0: der halbe Anteil eines Dachreiters am First.</translation>
    </message>
    <message>
        <source>Wood left on the legs' feet, plumb, to scribe them to a twisted roof or a ridge that sags. 0 mm to 80 mm.</source>
        <translation>Holzzugabe an den Füßen der Stiele, lotrecht, um sie einem verwundenen Dach oder einem durchhängenden First anzureißen. 0 mm bis 80 mm.</translation>
    </message>
</context>
<context>
    <name>Louverwright_Compare</name>
    <message>
        <source>Compare with an earlier report</source>
        <translation>Mit einem früheren Bericht vergleichen</translation>
    </message>
    <message>
        <source>List which lengths and angles changed since a report was written (its cuts.json), and which pieces already cut can be kept.</source>
        <translation>Auflisten, welche Längen und Winkel sich geändert haben, seit ein Bericht geschrieben wurde (seine cuts.json), und welche schon gesägten Stücke bleiben können.</translation>
    </message>
</context>
<context>
    <name>Louverwright_CutList</name>
    <message>
        <source>Cut list in a spreadsheet</source>
        <translation>Schnittliste in einer Tabelle</translation>
    </message>
    <message>
        <source>Write the vent's cut list into a spreadsheet in the document, or bring it up to date; what you have written right of it stays with its cut.</source>
        <translation>Die Schnittliste des Dachreiters in eine Tabelle im Dokument schreiben oder sie auf den neuesten Stand bringen; was Sie rechts daneben geschrieben haben, bleibt bei seinem Schnitt.</translation>
    </message>
</context>
<context>
    <name>Louverwright_CutReport</name>
    <message>
        <source>Cut report</source>
        <translation>Schnittbericht</translation>
    </message>
    <message>
        <source>Write the vent's cut list, saw settings and drawings to a folder: HTML, PDF, CSV and JSON.</source>
        <translation>Schnittliste, Sägeeinstellungen und Zeichnungen des Dachreiters in einen Ordner schreiben: HTML, PDF, CSV und JSON.</translation>
    </message>
</context>
<context>
    <name>Louverwright_EditVent</name>
    <message>
        <source>Change the dimensions of the selected vent in a panel, with a picture of what they make.</source>
        <translation>Die Maße des gewählten Dachreiters in einem Fenster ändern, mit einem Bild dessen, was daraus wird.</translation>
    </message>
    <message>
        <source>Edit vent</source>
        <translation>Dachreiter ändern</translation>
    </message>
</context>
<context>
    <name>Louverwright_Mend</name>
    <message>
        <source>A part came out wrong</source>
        <translation>Ein Teil ist falsch geworden</translation>
    </message>
    <message>
        <source>Give the real size of a piece that was cut wrong, or say that it is lost: see whether it may stay, what packing fills the gap, what to take off, or which parameter lets the vent follow it.</source>
        <translation>Das wirkliche Maß eines falsch gesägten Stücks angeben, oder dass es verloren ist: sehen, ob es bleiben darf, welche Beilage die Fuge füllt, was wegzunehmen ist oder mit welchem Parameter der Dachreiter ihm folgt.</translation>
    </message>
</context>
<context>
    <name>Louverwright_NewVent</name>
    <message>
        <source>Make a louvered vent in the active document, with its dimensions in a panel and a picture in the 3D view.</source>
        <translation>Einen Dachreiter mit Lamellen im aktiven Dokument machen, mit seinen Maßen in einem Fenster und einem Bild in der 3D-Ansicht.</translation>
    </message>
    <message>
        <source>New vent</source>
        <translation>Neuer Dachreiter</translation>
    </message>
</context>
<context>
    <name>Louverwright_Papers</name>
    <message>
        <source>Choose which sets of papers to write to a folder, such as the cut report, the lift plan or the checks.</source>
        <translation>Wählen, welche Papiere in einen Ordner geschrieben werden, etwa Schnittbericht, Hebeplan oder Prüfungen.</translation>
    </message>
    <message>
        <source>Papers for the shop</source>
        <translation>Papiere für die Werkstatt</translation>
    </message>
</context>
<context>
    <name>Louverwright_PartsAndMarks</name>
    <message>
        <source>List every mark as it stands in the report and find its pieces in the model, or the mark of a piece that is picked.</source>
        <translation>Alle Zeichen auflisten, wie sie im Bericht stehen, und ihre Stücke im Modell finden, oder das Zeichen eines gewählten Stücks.</translation>
    </message>
    <message>
        <source>Parts and marks</source>
        <translation>Teile und Zeichen</translation>
    </message>
</context>
<context>
    <name>Louverwright_RoofOpening</name>
    <message>
        <source>Cut the rough opening for the selected vent into the roof that it stands on; the roof itself is kept, and hidden.</source>
        <translation>Die Rohöffnung für den gewählten Dachreiter in das Dach schneiden, auf dem er steht; das Dach selbst bleibt erhalten und wird ausgeblendet.</translation>
    </message>
    <message>
        <source>Roof opening</source>
        <translation>Dachöffnung</translation>
    </message>
</context>
<context>
    <name>Louverwright_ShopDrawings</name>
    <message>
        <source>Draw the vent on TechDraw pages: general arrangement, a sheet a stage, sheets of parts; run again, the pages follow the model and keep what you added.</source>
        <translation>Zeichnet den Dachreiter auf TechDraw-Seiten: Übersicht, ein Blatt je Stufe, Blätter der Teile; erneut ausgeführt, folgen die Seiten dem Modell und behalten, was Sie ergänzt haben.</translation>
    </message>
    <message>
        <source>Shop drawings</source>
        <translation>Werkzeichnungen</translation>
    </message>
</context>
<context>
    <name>Louverwright_TakeApart</name>
    <message>
        <source>Pull the vent's stages and pieces apart in the 3D view, or take sides away to look in; closing puts all together.</source>
        <translation>Die Abschnitte und Stücke des Dachreiters in der 3D-Ansicht auseinanderziehen, oder Seiten wegnehmen, um hineinzuschauen; beim Schließen kommt alles wieder zusammen.</translation>
    </message>
    <message>
        <source>Take apart</source>
        <translation>Auseinandernehmen</translation>
    </message>
</context>
<context>
    <name>Louverwright_VentsAlongRidge</name>
    <message>
        <source>Show the vent as often as its property Vents says, spaced along its RidgeLength; those beyond that number are taken away.</source>
        <translation>Den Dachreiter so oft zeigen, wie seine Eigenschaft Vents sagt, verteilt über seine RidgeLength; die über diese Zahl hinaus werden entfernt.</translation>
    </message>
    <message>
        <source>Vents along the ridge</source>
        <translation>Dachreiter längs des Firsts</translation>
    </message>
</context>
</TS>
