document.title = 'Halfstop';
