BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
    $ErrorActionPreference = 'Continue'

    # Width and height stand in the first chunk of a PNG, big end first (ISO/IEC 15948).
    function Get-PngSize([string] $Path) {
        $bytes = [IO.File]::ReadAllBytes($Path)
        [Text.Encoding]::ASCII.GetString($bytes, 1, 3) | Should -Be 'PNG'
        foreach ($offset in 16, 20) { [BitConverter]::ToInt32($bytes[($offset + 3)..$offset], 0) }
    }
}

Describe 'Export-LayerImage' {
    BeforeEach {
        $folder = Join-Path $TestDrive ([guid]::NewGuid())
        $file = Get-LayerFile (Copy-Fixture groups-nested (Join-Path $folder 'hero.psd'))
        Push-Location -LiteralPath $folder
    }

    AfterEach { Pop-Location }

    It 'writes a picture for each part and says where each belongs' {
        $out = @($file | Export-LayerImage parts)
        $out | Should -BeOfType IO.FileInfo
        $out[0].DirectoryName | Should -Be (Join-Path $folder 'parts/hero')
        $manifest = Get-Content parts/hero/layers.json -Raw | ConvertFrom-Json
        $leaves = @($file | Get-Layer -Leaf)
        @($manifest.layers | Where-Object image).Count | Should -Be $leaves.Count
        @($manifest.layers).Count | Should -Be $file.LayerCount
        foreach ($entry in $manifest.layers | Where-Object image) {
            $layer = $file | Get-Layer -LayerNumber $entry.order
            $entry.path | Should -Be $layer.LayerPath
            ($entry.left, $entry.top) | Should -Be ($layer.Left, $layer.Top)
            Get-PngSize (Join-Path $folder "parts/hero/$($entry.image)") | Should -Be @($layer.Width, $layer.Height)
        }
        $rows = @(Import-Csv parts/hero/layers.csv)
        $rows.Path | Should -Be $manifest.layers.path
        $rows.Image | Where-Object { $_ } | Should -Be ($manifest.layers.image | Where-Object { $_ })
    }

    It 'is true to the schema that is shipped' -Skip:($PSEdition -ne 'Core') {
        $file | Export-LayerImage parts > $null
        $shipped = Join-Path (Get-Module LayerTools).ModuleBase 'layers.schema.json'
        (Get-FileHash $shipped).Hash | Should -Be (Get-FileHash parts/hero/layers.schema.json).Hash
        Get-Content parts/hero/layers.json -Raw | Test-Json -Schema (Get-Content $shipped -Raw) | Should -BeTrue
    }

    It 'takes chosen layers, as files and as layers' {
        (Get-Streams { $file | Export-LayerImage one -Name Body -Verbose }).Verbose -like '*1 picture' | Should -HaveCount 1
        ($file | Get-Layer -Name Body | Export-LayerImage two).Name | Should -Be 'Body.png', 'layers.schema.json', 'layers.csv', 'layers.json'
    }

    It 'makes pictures as large as the canvas' {
        $picture = $file | Export-LayerImage parts -Name Body -Canvas | Select-Object -First 1
        Get-PngSize $picture.FullName | Should -Be @($file.Width, $file.Height)
    }

    It 'draws the figure, and gives the stored picture' {
        $merged = $file | Export-LayerImage pictures -Merged
        $merged.PSObject.Properties.Name | Should -Contain 'NotDrawn'
        @($merged.NotDrawn).Count | Should -Be 0
        $merged.FullName | Should -Be (Join-Path $folder 'pictures/hero.png')
        $stored = $file | Export-LayerImage stored.png -Stored
        $stored.FullName | Should -Be (Join-Path $folder 'stored.png')
        foreach ($picture in $merged, $stored) { Get-PngSize $picture.FullName | Should -Be @($file.Width, $file.Height) }
    }

    It 'says what the pictures lack' {
        $effects = Get-LayerFile (Copy-Fixture ag-effects (Join-Path $folder 'effects.psd'))
        (Get-Streams { $effects | Export-LayerImage parts }).Warnings -like '*effects.psd*layer effects*' | Should -Not -BeNullOrEmpty
        (Get-Content parts/effects/layers.json -Raw | ConvertFrom-Json).layers.missing | Should -Contain 'layer effects'
        $file | Rename-Layer -Name Body -NewName Torso > $null
        $file | Set-Layer -Name Torso -Visible $false > $null
        (Get-Streams { $file | Export-LayerImage stored -Stored }).Warnings -like '*pending*' | Should -HaveCount 1
    }

    It 'refuses existing files without -Force, and a folder that two files share' {
        $file | Export-LayerImage parts > $null
        $result = Get-Streams { $file | Export-LayerImage parts }
        $result.Output | Should -BeNullOrEmpty
        $result.Errors[0].FullyQualifiedErrorId | Should -BeLike 'Unavailable,*'
        @($file | Export-LayerImage parts -Force).Count | Should -BeGreaterThan 3
        $other = Get-LayerFile (Copy-Fixture ag-plain (Join-Path $folder 'other/hero.psd'))
        (Get-Streams { $file, $other | Export-LayerImage both }).Errors[0].FullyQualifiedErrorId | Should -BeLike 'DestinationTaken,*'
    }

    It 'refuses a choice of layers for the whole figure, and pictures that are no PNG' {
        { $file | Export-LayerImage parts -Merged -Name Body } | Should -Throw -ErrorId 'WholeFigureOnly,*'
        (Get-Streams { $file | Export-LayerImage hero.jpg -Merged }).Errors[0].FullyQualifiedErrorId | Should -BeLike 'NotAPicture,*'
        { $file | Export-LayerImage parts -Merged -Stored } | Should -Throw
    }

    It 'names the limit that a picture is beyond, and lets it be raised' {
        $large = New-LayerFile large.psd -Width 1100 -Height 1000
        $result = Get-Streams { $large | Export-LayerImage parts -Limit @{ PictureMegapixels = 1 } }
        $result.Errors[0].FullyQualifiedErrorId | Should -BeLike 'LimitExceeded,*'
        $result.Errors[0].Exception.Message | Should -BeLike '*PictureMegapixels*'
        @($large | Export-LayerImage parts -Limit @{ PictureMegapixels = 2 }).Count | Should -BeGreaterThan 3
        { $large | Export-LayerImage parts -Limit @{ Pixels = 2 } } | Should -Throw '*PictureMegapixels*'
    }

    It 'writes nothing with -WhatIf' {
        $file | Export-LayerImage parts -WhatIf | Should -BeNullOrEmpty
        $file | Export-LayerImage parts -Merged -WhatIf | Should -BeNullOrEmpty
        Test-Path parts | Should -BeFalse
    }
}
